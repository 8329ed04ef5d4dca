using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Longrail.Coaching.Statistics;

/// <summary>A straight-line fit to one quantity or several, by least squares, with standard errors.</summary>
/// <remarks>Orthogonal factorisation, not the normal equations: Longley's data (NIST) would leave those few digits.
/// </remarks>
public sealed class LinearFit
{
    private LinearFit(double[] coefficients, double[] errors, double squares, int freedom, double rSquared)
    {
        Coefficients = coefficients;
        StandardErrors = errors;
        ResidualSquares = squares;
        Freedom = freedom;
        RSquared = rSquared;
    }

    /// <summary>The constant first, then one slope for each quantity.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Their standard errors, in the same order.</summary>
    public IReadOnlyList<double> StandardErrors { get; }

    /// <summary>What is left: the sum of squared distances from the fit.</summary>
    public double ResidualSquares { get; }

    /// <summary>Values less coefficients.</summary>
    public int Freedom { get; }

    /// <summary>The part of the variation that the fit explains.</summary>
    public double RSquared { get; }

    /// <summary>Standard deviation of what is left.</summary>
    public double Deviation => Math.Sqrt(ResidualSquares / Freedom);

    /// <summary>Fits y = b0 + b1 x1 + b2 x2 + ...</summary>
    /// <param name="rows">The quantities x of each observation, in equal number.</param>
    /// <param name="values">The value y of each observation.</param>
    /// <returns>The fit, or null where the quantities do not determine it: too few observations, or one quantity
    /// follows from the others.</returns>
    /// <exception cref="ArgumentException">Rows and values do not match.</exception>
    public static LinearFit? Of(IReadOnlyList<IReadOnlyList<double>> rows, IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(values);
        int n = rows.Count;
        int quantities = n == 0 ? 0 : rows[0].Count;
        if (values.Count != n || rows.Any(row => row.Count != quantities))
            throw new ArgumentException("Each observation has one value and as many quantities as the others.");
        if (n <= quantities + 1) return null;

        // Columns about their means and scaled to length one: the constant then stands apart, and no quantity is small
        // because of its unit.
        double[] means = [.. Enumerable.Range(0, quantities).Select(j => Mean(n, i => rows[i][j]))];
        double[] scales =
        [
            .. Enumerable.Range(0, quantities).Select(j =>
                Math.Sqrt(Enumerable.Range(0, n).Sum(i => (rows[i][j] - means[j]) * (rows[i][j] - means[j])))),
        ];
        if (scales.Any(scale => !(scale > 0))) return null;
        double mean = Mean(n, i => values[i]);
        Vector<double> y = Vector<double>.Build.Dense(n, i => values[i] - mean);
        if (quantities == 0) return new LinearFit([mean], [y.L2Norm() / Math.Sqrt(n * (n - 1.0))], y * y, n - 1, 0);

        Matrix<double> x = Matrix<double>.Build.Dense(n, quantities, (i, j) => (rows[i][j] - means[j]) / scales[j]);
        QR<double> qr = x.QR(QRMethod.Thin);
        // Relative to columns of length one.
        if (qr.R.Diagonal().Enumerate().Any(entry => Math.Abs(entry) < 1e-12)) return null;
        Vector<double> scaled = qr.R.Solve(qr.Q.TransposeThisAndMultiply(y));
        Vector<double> residuals = y - x * scaled;
        double squares = residuals * residuals;
        Matrix<double> inverse = qr.R.Inverse();
        return Assemble(scaled, inverse * inverse.Transpose(), means, scales, mean, squares, n, y * y);
    }

    private static LinearFit Assemble(
        Vector<double> scaled, Matrix<double> covariance, double[] means, double[] scales, double mean, double squares,
        int n, double total)
    {
        int quantities = means.Length;
        int freedom = n - quantities - 1;
        double variance = squares / freedom;
        double[] coefficients = new double[quantities + 1];
        double[] errors = new double[quantities + 1];
        Vector<double> towards = Vector<double>.Build.Dense(quantities, j => means[j] / scales[j]);
        coefficients[0] = mean - towards * scaled;
        errors[0] = Math.Sqrt(variance * (1.0 / n + towards * (covariance * towards)));
        for (int j = 0; j < quantities; j++)
        {
            coefficients[j + 1] = scaled[j] / scales[j];
            errors[j + 1] = Math.Sqrt(variance * covariance[j, j]) / scales[j];
        }

        return new LinearFit(coefficients, errors, squares, freedom, total > 0 ? 1 - squares / total : 0);
    }

    private static double Mean(int n, Func<int, double> value)
    {
        double mean = Enumerable.Range(0, n).Average(value);
        return mean + Enumerable.Range(0, n).Average(i => value(i) - mean);
    }
}
