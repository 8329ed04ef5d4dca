using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace Longrail.Coaching.Statistics;

/// <summary>Looking at a trial before it is over without fooling oneself: limits for each planned look such that all
/// looks together give no more false alarms than one would.</summary>
/// <remarks>
/// Our own, since no kept library has it: the distribution of the running sum is carried from look to look by a Gauss
/// rule (P. Armitage, C. K. McPherson, B. C. Rowe, J. R. Stat. Soc. A 132, 235 (1969)); constants and inflation factors
/// are checked against C. Jennison, B. W. Turnbull, Group Sequential Methods (2000), chapter 2. Limits are for normal
/// deviates; used through <see cref="NominalLevel"/> with Student's t they hold closely.
/// </remarks>
public sealed class GroupSequential
{
    private const int Nodes = 64;

    // Beyond this many deviations nothing is left.
    private const double Far = 9;

    private GroupSequential(StoppingRule rule, double level, double[] fractions, double constant)
    {
        Rule = rule;
        Level = level;
        Fractions = fractions;
        Constant = constant;
        Limits = [.. LimitsOf(rule, fractions, constant)];
    }

    /// <summary>How the false alarms are shared out.</summary>
    public StoppingRule Rule { get; }

    /// <summary>False alarms over all looks.</summary>
    public double Level { get; }

    /// <summary>The part of all shots that is in at each look; the last is 1.</summary>
    public IReadOnlyList<double> Fractions { get; }

    /// <summary>The limit at the last look, from which the others follow.</summary>
    public double Constant { get; }

    /// <summary>At each look, how many standard errors a difference must reach.</summary>
    public IReadOnlyList<double> Limits { get; }

    /// <summary>Limits for planned looks.</summary>
    /// <param name="rule">How the false alarms are shared out.</param>
    /// <param name="fractions">The part of all shots that is in at each look, rising, the last 1.</param>
    /// <param name="level">False alarms over all looks, between 0 and 1.</param>
    /// <exception cref="ArgumentException">No looks, or fractions that do not rise to 1.</exception>
    public static GroupSequential Of(StoppingRule rule, IReadOnlyList<double> fractions, double level = 0.05)
    {
        ArgumentNullException.ThrowIfNull(fractions);
        double[] looks = [.. fractions];
        double before = 0;
        foreach (double look in looks)
        {
            if (!(look > before))
                throw new ArgumentException("Each look lies after the one before.", nameof(fractions));
            before = look;
        }

        if (before != 1) throw new ArgumentException("The last look is at 1: all shots.", nameof(fractions));
        double constant = Brent.FindRoot(
            c => FalseAlarms(LimitsOf(rule, looks, c), looks) - level, 0.1, 8, accuracy: 1e-10);
        return new GroupSequential(rule, level, looks, constant);
    }

    /// <summary>Limits for looks at equal steps.</summary>
    /// <param name="rule">How the false alarms are shared out.</param>
    /// <param name="looks">How many, positive.</param>
    /// <param name="level">False alarms over all looks.</param>
    public static GroupSequential Equal(StoppingRule rule, int looks, double level = 0.05) =>
        Of(rule, [.. Enumerable.Range(1, looks).Select(k => k == looks ? 1 : (double)k / looks)], level);

    /// <summary>False alarms of looking again and again with the limit of a single test.</summary>
    /// <param name="looks">How many looks at equal steps, positive.</param>
    /// <param name="level">False alarms of one look.</param>
    public static double FalseAlarmsOfPeeking(int looks, double level = 0.05)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(looks);
        double limit = Normal.InvCDF(0, 1, 1 - level / 2);
        return FalseAlarms(
            Enumerable.Repeat(limit, looks), [.. Enumerable.Range(1, looks).Select(k => (double)k / looks)]);
    }

    /// <summary>The level at which a single test at that look is to be made.</summary>
    /// <param name="look">The look, from 0.</param>
    public double NominalLevel(int look) => 2 * Normal.CDF(0, 1, -Limits[look]);

    /// <summary>How many times the shots of a trial with one look are needed at most, for the same power.</summary>
    /// <param name="power">Between the level and 1.</param>
    public double Inflation(double power)
    {
        double single = Normal.InvCDF(0, 1, 1 - Level / 2) + Normal.InvCDF(0, 1, power);
        double several = Brent.FindRoot(drift => Power(drift) - power, 0, 12, 1e-10);
        return several * several / (single * single);
    }

    /// <summary>Chance that the right limit is crossed at some look, and no wrong one before.</summary>
    /// <param name="drift">The true difference over its standard error with all shots in.</param>
    public double Power(double drift) => Crossing(Limits, [.. Fractions], drift).Above;

    private static double FalseAlarms(IEnumerable<double> limits, double[] fractions)
    {
        (double above, double below) = Crossing(limits, fractions, 0);
        return above + below;
    }

    // With s the running sum over the square root of all shots, s at fraction t is normal with mean d t and variance t.
    // Its density within the limits is kept at the nodes of a Gauss rule and carried to the next look.
    private static (double Above, double Below) Crossing(
        IEnumerable<double> limits, double[] fractions, double drift)
    {
        double above = 0;
        double below = 0;
        double[] points = [0];
        double[] weights = [1];
        double before = 0;
        int k = 0;
        foreach (double limit in limits)
        {
            double step = fractions[k] - before;
            double root = Math.Sqrt(step);
            double edge = limit * Math.Sqrt(fractions[k]);
            for (int i = 0; i < points.Length; i++)
            {
                double mean = points[i] + drift * step;
                above += weights[i] * Normal.CDF(0, 1, (mean - edge) / root);
                below += weights[i] * Normal.CDF(0, 1, (-edge - mean) / root);
            }

            before = fractions[k++];
            if (k == fractions.Length) break;
            double reach = Far * Math.Sqrt(before);
            var rule = new GaussLegendreRule(
                Math.Max(-edge, drift * before - reach), Math.Min(edge, drift * before + reach), Nodes);
            (points, weights) = Carried(points, weights, rule, drift * step, root);
        }

        return (above, below);
    }

    private static (double[] Points, double[] Weights) Carried(
        double[] points, double[] weights, GaussLegendreRule rule, double shift, double root)
    {
        double[] next = new double[rule.Order];
        double[] mass = new double[rule.Order];
        for (int j = 0; j < rule.Order; j++)
        {
            next[j] = rule.GetAbscissa(j);
            double density = 0;
            for (int i = 0; i < points.Length; i++)
                density += weights[i] * Normal.PDF(points[i] + shift, root, next[j]);
            mass[j] = rule.GetWeight(j) * density;
        }

        return (next, mass);
    }

    private static IEnumerable<double> LimitsOf(StoppingRule rule, double[] fractions, double constant) =>
        fractions.Select(t => rule == StoppingRule.Pocock ? constant : constant / Math.Sqrt(t));
}
