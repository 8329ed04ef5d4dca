using CsCheck;
using Longrail.Physics.Roots;
using Longrail.TestKit;

namespace Longrail.Physics.Tests.Roots;

/// <summary>First crossings of polynomials: choose the roots, expand, recover them. Plain algebra is the
/// source.</summary>
public class FirstCrossingTests
{
    private const int Count = 20_000;

    [Fact]
    public void The_first_positive_root_of_a_quartic_with_chosen_real_roots_comes_back() => Cases.Check(
        from first in Gen.Double[1e-4, 10]
        from steps in Gen.Double[-4, 1].Select(power => Math.Pow(10, power)).Array[3]
        from before in Gen.Int[0, 2]
        from scale in Gen.Double[-6, 6].Select(power => Math.Pow(10, power))
        select (Roots: Arranged(first, steps, before), scale),
        Count,
        item => Recovered(Expanded(item.scale, item.Roots), item.Roots),
        item => $"roots {string.Join(", ", item.Roots)} times {item.scale}");

    [Fact]
    public void The_first_positive_root_comes_back_when_the_other_two_are_complex() => Cases.Check(
        from first in Gen.Double[1e-4, 10]
        from second in Gen.Double[-10, 20]
        from real in Gen.Double[-10, 10]
        from imaginary in Gen.Double[1e-3, 10]
        from scale in Gen.Double[-6, 6].Select(power => Math.Pow(10, power))
        where Math.Abs(first - second) > 1e-3 && Math.Abs(second) > 1e-3
        select (first, second, real, imaginary, scale),
        Count,
        item =>
        {
            // (t - a)(t - b)((t - re)^2 + im^2), with the sign that makes it positive at 0.
            double[] pair = Product([-item.first, 1], [-item.second, 1]);
            double square = item.real * item.real + item.imaginary * item.imaginary;
            double[] c = Product(pair, [square, -2 * item.real, 1]);
            double sign = Math.Sign(c[0]) * item.scale;
            Recovered([.. c.Select(x => x * sign)], [item.first, item.second]);
        },
        item => $"{item}");

    [Fact]
    public void A_quartic_that_stays_positive_is_never_crossed() => Cases.Check(
        Gen.Double[-5, 5].Array[4],
        Count,
        item =>
        {
            double[] c = Product(
                [item[0] * item[0] + 0.01 + item[1] * item[1], -2 * item[0], 1],
                [item[2] * item[2] + 0.01 + item[3] * item[3], -2 * item[2], 1]);
            double found = FirstCrossing.Quartic(c[0], c[1], c[2], c[3], c[4], 100);
            Expect.That(double.IsPositiveInfinity(found), $"found {found:R}");
        },
        item => string.Join(", ", item));

    [Fact]
    public void The_first_positive_root_of_a_quadratic_with_chosen_roots_comes_back() => Cases.Check(
        from first in Gen.Double[-9, 2].Select(power => Math.Pow(10, power))
        from step in Gen.Double[-6, 6].Select(power => Math.Pow(10, power))
        from negative in Gen.Bool
        from scale in Gen.Double[-6, 6].Select(power => Math.Pow(10, power))
        select (first, second: negative ? -step : first + step, scale),
        Count,
        item =>
        {
            double[] c = Product([-item.first, 1], [-item.second, 1]);
            double sign = Math.Sign(c[0]) * item.scale;
            double allowed = Allowed([.. c.Select(x => x * sign)], item.first);
            if (Math.Abs(item.first - item.second) < 10 * allowed) return;
            Expect.Near(
                item.first, FirstCrossing.Quadratic(sign * c[0], sign * c[1], sign * c[2], 1e9), allowed, "root");
        },
        item => $"{item}");

    [Fact]
    public void A_crossing_after_the_limit_is_never()
    {
        double[] c = Expanded(1, [2, 3, 5, 7]);
        Expect.Near(2, FirstCrossing.Quartic(c[0], c[1], c[2], c[3], c[4], 2.001), 1e-12, "just within");
        Assert.Equal(double.PositiveInfinity, FirstCrossing.Quartic(c[0], c[1], c[2], c[3], c[4], 1.999));
        Assert.Equal(double.PositiveInfinity, FirstCrossing.Quadratic(6, -5, 1, 1.999));
        Expect.Near(2, FirstCrossing.Quadratic(6, -5, 1, 2.001), 1e-14, "quadratic, just within");
    }

    [Fact]
    public void A_closed_gap_counts_at_once_when_it_closes_further_and_not_while_it_opens()
    {
        // g = -e - t: closed and closing. g = -e + t: closed by rounding, opening (Bannerman et al., Comput. Part.
        // Mech. 1, 191 (2014)).
        Assert.Equal(0, FirstCrossing.Quadratic(-1e-15, -1, 0, 10));
        Assert.Equal(double.PositiveInfinity, FirstCrossing.Quadratic(-1e-15, 1, 0, 10));
        Assert.Equal(0, FirstCrossing.Quartic(-1e-15, -1, 0, 0, 1e-9, 1));
        Assert.Equal(double.PositiveInfinity, FirstCrossing.Quartic(-1e-15, 1, 0, 0, 1e-9, 10));

        // Opens, turns and closes again: g = -e + t - t^2 closes at 1.
        Expect.Near(1, FirstCrossing.Quadratic(-1e-15, 1, -1, 10), 1e-12, "second time");
        Expect.Near(1, FirstCrossing.Quartic(-1e-15, 1, -1, 0, 0, 10), 1e-12, "second time, as a quartic");
    }

    [Fact]
    public void Against_a_brute_scan_of_random_coefficients_nothing_is_missed() => Cases.Check(
        Gen.Double[-3, 3].Array[5],
        3000,
        c =>
        {
            double g0 = Math.Abs(c[0]) + 0.01;
            const double limit = 4, step = 1e-3;
            double found = FirstCrossing.Quartic(g0, c[1], c[2], c[3], c[4], limit);
            double Value(double t) => g0 + t * (c[1] + t * (c[2] + t * (c[3] + t * c[4])));
            double scanned = double.PositiveInfinity;
            for (double t = step; t <= limit; t += step)
            {
                if (Value(t) > 0) continue;
                scanned = t;
                break;
            }

            // The scan can miss a dip shorter than its step; then what was found must be a root all the same.
            if (double.IsPositiveInfinity(found))
                Expect.That(double.IsPositiveInfinity(scanned), $"missed the one near {scanned}");
            else
                Expect.Less(found, scanned + 1e-9, "found no later than scanned");
            if (double.IsFinite(found)) Expect.Near(0, Value(found), 1e-11, "value at the root");
        },
        item => string.Join(", ", item));

    private static void Recovered(double[] c, double[] roots)
    {
        double expected = roots.Where(r => r > 0).Min();
        double allowed = Allowed(c, expected);
        // Where rounding of the coefficients alone could merge two roots or make them complex there is nothing to
        // recover.
        if (roots.Any(r => r != expected && Math.Abs(r - expected) < 10 * allowed)) return;
        Expect.Near(expected, FirstCrossing.Quartic(c[0], c[1], c[2], c[3], c[4], 1e3), allowed, "root");
    }

    /// <summary>How far rounding the coefficients and one evaluation (a few parts in 1e16 of each term) can move a
    /// simple root.</summary>
    private static double Allowed(double[] c, double root)
    {
        double terms = 0, slope = 0, power = 1;
        for (int i = 0; i < c.Length; i++)
        {
            terms += Math.Abs(c[i]) * power;
            if (i + 1 < c.Length) slope += (i + 1) * c[i + 1] * power;
            power *= root;
        }

        return 20 * 2.2e-16 * terms / Math.Abs(slope) + 4e-16 * root;
    }

    /// <summary>Four roots: one first positive, others after it, some of them moved to before zero.</summary>
    private static double[] Arranged(double first, double[] steps, int before)
    {
        double[] roots = [first, first + steps[0], first + steps[0] + steps[1], first + steps[0] + steps[1] + steps[2]];
        for (int i = 0; i < before; i++) roots[3 - i] = -roots[3 - i];
        return roots;
    }

    /// <summary>Coefficients of the product of (t - root), with the sign that makes it positive at 0.</summary>
    private static double[] Expanded(double scale, double[] roots)
    {
        double[] c = [1];
        foreach (double root in roots) c = Product(c, [-root, 1]);
        double sign = Math.Sign(c[0]) * scale;
        return [.. c.Select(x => x * sign)];
    }

    private static double[] Product(double[] a, double[] b)
    {
        var c = new double[a.Length + b.Length - 1];
        for (int i = 0; i < a.Length; i++)
            for (int j = 0; j < b.Length; j++) c[i + j] += a[i] * b[j];
        return c;
    }
}
