namespace Longrail.Coaching.Statistics;

/// <summary>What came of a logistic fit.</summary>
public enum LogisticOutcome
{
    /// <summary>The greatest likelihood was found.</summary>
    Converged,

    /// <summary>The quantities part all makes from all misses (or there are none of one kind): the likelihood grows for
    /// ever, and no coefficient or standard error means anything.</summary>
    Parted,

    /// <summary>Not found in the steps allowed.</summary>
    NotConverged,
}
