namespace Longrail.Coaching.Statistics;

/// <summary>How the false alarms of a trial are shared out among the looks at it.</summary>
public enum StoppingRule
{
    /// <summary>Hardly any at the early looks: an early end needs a great difference, the last look is almost as if it
    /// were the only one (P. C. O'Brien, T. R. Fleming, Biometrics 35, 549 (1979)).</summary>
    OBrienFleming,

    /// <summary>The same limit at every look (S. J. Pocock, Biometrika 64, 191 (1977)).</summary>
    Pocock,
}
