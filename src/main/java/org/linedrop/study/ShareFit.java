package org.linedrop.study;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/** A least-squares fit of shares from 0 to 1 to readings. */
final class ShareFit {
    /** Step of a share for a slope: far over what a solve leaves, far under what bends. */
    private static final double SLOPE_STEP = 1e-4;
    /** Relative change of misfit and share at which a fit is good enough for a gauge. */
    private static final double ENOUGH = 1e-5;

    private static final int MOST_EVALUATIONS = 60;
    /** A correlation over this is no knowledge of two things. */
    private static final double SAME = 0.999;

    /** What was fitted. */
    final double[] shares;
    /** What is left: the sum of squares. */
    final double misfit;
    /** Standard deviations of the shares; NaN where the readings say nothing. */
    final double[] deviations;

    private ShareFit(double[] shares, double misfit, double[] deviations) {
        this.shares = shares;
        this.misfit = misfit;
        this.deviations = deviations;
    }

    /**
     * Fits.
     *
     * @param left  what shares leave of each reading, in its standard deviations
     * @param start where to begin
     * @param count how many readings there are
     */
    static ShareFit of(UnaryOperator<double[]> left, double[] start, int count) {
        try {
            LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(ENOUGH)
                    .withParameterRelativeTolerance(ENOUGH)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(new double[count])
                            .model(point -> model(left, point.toArray()))
                            .parameterValidator(ShareFit::within)
                            .maxEvaluations(MOST_EVALUATIONS)
                            .maxIterations(MOST_EVALUATIONS)
                            .build());
            double[] shares = within(optimum.getPoint()).toArray();
            double misfit = misfit(optimum.getResiduals().toArray());
            return new ShareFit(shares, misfit, deviations(optimum, shares.length));
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException notFine) {
            double[] unknown = new double[start.length];
            Arrays.fill(unknown, Double.NaN);
            return new ShareFit(start, misfit(left.apply(start)), unknown);
        }
    }

    /** The sum of squares. */
    static double misfit(double[] deviations) {
        double sum = 0;
        for (double deviation : deviations) {
            sum += deviation * deviation;
        }
        return sum;
    }

    private static double[] deviations(LeastSquaresOptimizer.Optimum optimum, int count) {
        double[] deviations = new double[count];
        Arrays.fill(deviations, Double.NaN);
        try {
            RealMatrix covariances = optimum.getCovariances(1e-14);
            for (int i = 0; i < count; i++) {
                for (int k = 0; k < i; k++) {
                    double both = Math.sqrt(covariances.getEntry(i, i) * covariances.getEntry(k, k));
                    if (!(Math.abs(covariances.getEntry(i, k)) <= SAME * both)) {
                        return deviations;
                    }
                }
            }
            for (int i = 0; i < count; i++) {
                deviations[i] = Math.sqrt(covariances.getEntry(i, i));
            }
        } catch (SingularMatrixException nothingKnown) {
            return deviations;
        }
        return deviations;
    }

    private static RealVector within(RealVector shares) {
        RealVector inside = shares.copy();
        for (int i = 0; i < inside.getDimension(); i++) {
            inside.setEntry(i, Math.min(1, Math.max(0, inside.getEntry(i))));
        }
        return inside;
    }

    private static Pair<RealVector, RealMatrix> model(UnaryOperator<double[]> left, double[] shares) {
        double[] here = left.apply(shares);
        RealMatrix slopes = new Array2DRowRealMatrix(here.length, shares.length);
        for (int i = 0; i < shares.length; i++) {
            double step = shares[i] > 1 - SLOPE_STEP ? -SLOPE_STEP : SLOPE_STEP;
            double[] beside = shares.clone();
            beside[i] += step;
            double[] there = left.apply(beside);
            for (int k = 0; k < here.length; k++) {
                slopes.setEntry(k, i, (there[k] - here[k]) / step);
            }
        }
        return new Pair<>(new ArrayRealVector(here), slopes);
    }
}
