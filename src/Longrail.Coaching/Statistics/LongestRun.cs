namespace Longrail.Coaching.Statistics;

/// <summary>The longest run of makes that mere chance gives: what a streak must be held against.</summary>
public static class LongestRun
{
    /// <summary>Chance that no run is longer than a number.</summary>
    /// <param name="trials">How many trials, not negative.</param>
    /// <param name="chance">Chance of each, from 0 to 1.</param>
    /// <param name="run">The length, not negative.</param>
    public static double AtMost(int trials, double chance, int run)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(trials);
        ArgumentOutOfRangeException.ThrowIfNegative(run);
        if (run >= trials) return 1;

        // Chance of every length of the run that is going on, after each trial.
        double[] going = new double[run + 1];
        going[0] = 1;
        for (int trial = 0; trial < trials; trial++)
        {
            double all = going.Sum();
            for (int length = run; length > 0; length--) going[length] = chance * going[length - 1];
            going[0] = (1 - chance) * all;
        }

        return going.Sum();
    }

    /// <summary>The expected longest run.</summary>
    /// <param name="trials">How many trials, not negative.</param>
    /// <param name="chance">Chance of each, from 0 to 1.</param>
    public static double Expected(int trials, double chance) =>
        Enumerable.Range(0, Math.Max(0, trials)).Sum(run => 1 - AtMost(trials, chance, run));

    /// <summary>The length that the longest run does not exceed with that chance.</summary>
    /// <param name="trials">How many trials, not negative.</param>
    /// <param name="chance">Chance of each, from 0 to 1.</param>
    /// <param name="share">As 0.95.</param>
    public static int Within(int trials, double chance, double share = Levels.Usual)
    {
        Levels.Require(share);
        int run = 0;
        while (AtMost(trials, chance, run) < share) run++;
        return run;
    }
}
