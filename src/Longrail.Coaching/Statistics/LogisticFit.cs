using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Longrail.Coaching.Statistics;

/// <summary>How a chance depends on quantities: logit p = b0 + b1 x1 + ..., fitted to makes and misses by greatest
/// likelihood.</summary>
/// <remarks>Newton's steps, halved where the likelihood would fall. With a known part of the logit (an offset, as the
/// physics' expectation for each shot) and no quantities the constant is the ability that is left once difficulty is
/// taken out.</remarks>
public sealed class LogisticFit
{
    private const int MostSteps = 50;

    // A logit beyond this for every trial says that the quantities part makes from misses: no finite fit exists.
    private const double Parted = 25;

    private LogisticFit(
        LogisticOutcome outcome, double[] coefficients, Matrix<double> covariance, double deviance, double nullDeviance)
    {
        Outcome = outcome;
        Coefficients = coefficients;
        Covariance = covariance;
        Deviance = deviance;
        NullDeviance = nullDeviance;
    }

    /// <summary>Whether there is a fit.</summary>
    public LogisticOutcome Outcome { get; }

    /// <summary>The constant first, then one for each quantity.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Covariance of the coefficients, from the curvature of the likelihood.</summary>
    public Matrix<double> Covariance { get; }

    /// <summary>Minus twice the log-likelihood of the fit.</summary>
    public double Deviance { get; }

    /// <summary>The same with the constant alone.</summary>
    public double NullDeviance { get; }

    /// <summary>Their standard errors.</summary>
    public IReadOnlyList<double> StandardErrors =>
        [.. Covariance.Diagonal().Enumerate().Select(variance => Math.Sqrt(variance))];

    /// <summary>Chance of so large a gain in likelihood if no quantity mattered.</summary>
    public double P => Coefficients.Count < 2
        ? 1
        : 1 - ChiSquared.CDF(Coefficients.Count - 1, Math.Max(0, NullDeviance - Deviance));

    /// <summary>The fitted chance.</summary>
    /// <param name="quantities">One value for each quantity.</param>
    /// <param name="offset">The known part of the logit.</param>
    public double Chance(IReadOnlyList<double> quantities, double offset = 0) =>
        Share(offset + Coefficients[0] + quantities.Select((x, j) => x * Coefficients[j + 1]).Sum());

    /// <summary>An interval for the chance: symmetric in the logit, so that it keeps within 0 and 1.</summary>
    /// <param name="quantities">One value for each quantity.</param>
    /// <param name="offset">The known part of the logit.</param>
    /// <param name="confidence">Between 0 and 1.</param>
    public Interval ChanceWithin(
        IReadOnlyList<double> quantities, double offset = 0, double confidence = Levels.Usual)
    {
        Vector<double> x = Vector<double>.Build.DenseOfEnumerable(quantities.Prepend(1));
        double logit = offset + x * Vector<double>.Build.DenseOfEnumerable(Coefficients);
        double half = Levels.Deviate(confidence) * Math.Sqrt(x * (Covariance * x));
        return new Interval(Share(logit - half), Share(logit + half));
    }

    /// <summary>Fits makes and misses.</summary>
    /// <param name="rows">The quantities of each trial, in equal number; may be none.</param>
    /// <param name="made">Whether each trial came off.</param>
    /// <param name="offsets">The known part of each logit, or null for 0.</param>
    /// <exception cref="ArgumentException">The lists do not match, or are empty.</exception>
    public static LogisticFit Of(
        IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<bool> made, IReadOnlyList<double>? offsets = null)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(made);
        int n = rows.Count;
        if (n == 0 || made.Count != n || (offsets is not null && offsets.Count != n)
            || rows.Any(row => row.Count != rows[0].Count))
        {
            throw new ArgumentException("Each trial has its quantities, in equal number, and came off or did not.");
        }

        Matrix<double> x = Matrix<double>.Build.Dense(n, rows[0].Count + 1, (i, j) => j == 0 ? 1 : rows[i][j - 1]);
        Vector<double> y = Vector<double>.Build.Dense(n, i => made[i] ? 1 : 0);
        Vector<double> known = Vector<double>.Build.Dense(n, i => offsets?[i] ?? 0);
        double alone = x.ColumnCount == 1 ? double.NaN : Newton(x.SubMatrix(0, n, 0, 1), y, known).Deviance;
        LogisticFit fit = Newton(x, y, known);
        return double.IsNaN(alone)
            ? new LogisticFit(fit.Outcome, [.. fit.Coefficients], fit.Covariance, fit.Deviance, fit.Deviance)
            : new LogisticFit(fit.Outcome, [.. fit.Coefficients], fit.Covariance, fit.Deviance, alone);
    }

    private static LogisticFit Newton(Matrix<double> x, Vector<double> y, Vector<double> known)
    {
        Vector<double> b = Vector<double>.Build.Dense(x.ColumnCount);
        double deviance = DevianceOf(x, y, known, b);
        for (int step = 0; step < MostSteps; step++)
        {
            Vector<double> p = (known + x * b).Map(Share);
            Matrix<double> curvature = Curvature(x, p);
            Vector<double> move = curvature.Svd().Solve(x.TransposeThisAndMultiply(y - p));
            double after = DevianceOf(x, y, known, b + move);
            for (int halved = 0; halved < 30 && !(after <= deviance + 1e-12); halved++)
            {
                move /= 2;
                after = DevianceOf(x, y, known, b + move);
            }

            b += move;
            bool isDone = Math.Abs(deviance - after) < 1e-12 * (1 + deviance)
                && move.L2Norm() < 1e-8 * (1 + b.L2Norm());
            deviance = after;
            if (deviance < 1e-6 * y.Count || (known + x * b).AbsoluteMaximum() > Parted)
                return Result(LogisticOutcome.Parted, x, known, b, deviance);
            if (isDone) return Result(LogisticOutcome.Converged, x, known, b, deviance);
        }

        return Result(LogisticOutcome.NotConverged, x, known, b, deviance);
    }

    private static LogisticFit Result(
        LogisticOutcome outcome, Matrix<double> x, Vector<double> known, Vector<double> b, double deviance) =>
        new(outcome, [.. b], Curvature(x, (known + x * b).Map(Share)).PseudoInverse(), deviance, deviance);

    private static Matrix<double> Curvature(Matrix<double> x, Vector<double> p) =>
        x.TransposeThisAndMultiply(Matrix<double>.Build.Dense(
            x.RowCount, x.ColumnCount, (i, j) => p[i] * (1 - p[i]) * x[i, j]));

    private static double DevianceOf(Matrix<double> x, Vector<double> y, Vector<double> known, Vector<double> b)
    {
        Vector<double> logits = known + x * b;
        double sum = 0;
        // log(1 + exp(l)), without overflow.
        for (int i = 0; i < logits.Count; i++)
        {
            double l = y[i] > 0 ? -logits[i] : logits[i];
            sum += l > 0 ? l + Math.Log(1 + Math.Exp(-l)) : Math.Log(1 + Math.Exp(l));
        }

        return 2 * sum;
    }

    private static double Share(double logit) => 1 / (1 + Math.Exp(-logit));
}
