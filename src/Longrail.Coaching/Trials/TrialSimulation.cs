using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Trials;

/// <summary>What the simulated strokes of all conditions say: where they land, how they scatter, what the speed
/// explains.</summary>
internal sealed class TrialSimulation
{
    private readonly IReadOnlyList<SimulatedShot[]> _shots;
    private readonly double _reading;

    /// <summary>Takes the strokes.</summary>
    /// <param name="shots">Of each condition, stroke by stroke with the same errors.</param>
    /// <param name="reading">Standard error of reading a landing, metres.</param>
    internal TrialSimulation(IReadOnlyList<SimulatedShot[]> shots, double reading)
    {
        _shots = shots;
        _reading = reading;
    }

    /// <summary>Where a condition lands and how it scatters, reading included; null with fewer than two
    /// landings.</summary>
    internal (double Mean, double Spread)? Landing(int condition)
    {
        double[] landings = [.. _shots[condition].Select(shot => shot.Landing).Where(double.IsFinite)];
        if (landings.Length < 2) return null;
        SampleSummary sample = SampleSummary.Of(landings);
        return (sample.Mean, Math.Sqrt(sample.Variance + _reading * _reading));
    }

    /// <summary>The part of a condition's strokes that gave no landing.</summary>
    internal double Lost(int condition) => _shots[condition].Average(shot => double.IsFinite(shot.Landing) ? 0 : 1);

    /// <summary>How often the ball went down.</summary>
    internal Odds Made(int condition) => Odds.Of(_shots[condition].Count(shot => shot.Made), _shots[condition].Length);

    /// <summary>The expected difference of landings: over the strokes that give one in both conditions, so that the
    /// player's errors drop out.</summary>
    internal double Effect(int condition, int against)
    {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < _shots[condition].Length; i++)
        {
            double difference = _shots[condition][i].Landing - _shots[against][i].Landing;
            if (!double.IsFinite(difference)) continue;
            sum += difference;
            count++;
        }

        return count > 0 ? sum / count : double.NaN;
    }

    /// <summary>The part of the scatter within two conditions that the speed, as read, explains.</summary>
    internal double ExplainedBySpeed(int condition, int against)
    {
        SumsOfProducts sums = Sums(condition) + Sums(against);
        double reading = _reading * _reading * (Count(condition) + Count(against) - 2);
        double all = sums.Yy + reading;
        return all > 0 ? sums.Explained / all : 0;
    }

    private int Count(int condition) => _shots[condition].Count(shot => double.IsFinite(shot.Landing));

    private SumsOfProducts Sums(int condition) => SumsOfProducts.Of(
        [
            .. _shots[condition].Where(shot => double.IsFinite(shot.Landing))
                .Select(shot => new CovariatePair(shot.Speed, shot.Landing)),
        ]);
}
