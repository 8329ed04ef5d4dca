using System.Globalization;

namespace Longrail.TestKit;

/// <summary>Checks whose messages say what was wrong, by how much, and what was allowed.</summary>
public static class Expect
{
    /// <summary>Two numbers agree within an absolute tolerance. Anything not finite fails.</summary>
    public static void Near(double expected, double actual, double tolerance, string what)
    {
        if (double.IsFinite(actual) && Math.Abs(actual - expected) <= tolerance) return;
        throw new ExpectationException(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: expected {expected:R}, was {actual:R}; off by {actual - expected:G3}, allowed {tolerance:G3}."));
    }

    /// <summary>Two numbers agree within a tolerance relative to the expected one (or to 1, if that is larger than
    /// the number).</summary>
    public static void Close(double expected, double actual, double relative, string what) =>
        Near(expected, actual, relative * Math.Max(1, Math.Abs(expected)), what);

    /// <summary>A number agrees with a printed one within half a unit of its last digit.</summary>
    public static void Printed(GoldenCell expected, double actual, string what) =>
        Near(expected.Value, actual, expected.HalfUnit * (1 + Tolerance.ClosedForm) + Tolerance.ClosedForm, what);

    /// <summary>A condition holds.</summary>
    public static void That(bool condition, string what)
    {
        if (!condition) throw new ExpectationException(what);
    }

    /// <summary>One number is smaller than another, by a margin.</summary>
    public static void Less(double smaller, double larger, string what, double margin = 0)
    {
        if (smaller + margin < larger) return;
        throw new ExpectationException(string.Create(
            CultureInfo.InvariantCulture, $"{what}: {smaller:R} is not less than {larger:R} by {margin:G3}."));
    }

    /// <summary>The order at which errors fall as steps are made smaller by a factor: log(error ratio) / log(factor),
    /// for each pair.</summary>
    public static double Order(double coarseError, double fineError, double factor) =>
        Math.Log(coarseError / fineError) / Math.Log(factor);
}
