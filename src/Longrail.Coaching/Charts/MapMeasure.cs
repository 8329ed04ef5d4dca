namespace Longrail.Coaching.Charts;

/// <summary>What a map shows of each place.</summary>
public enum MapMeasure
{
    /// <summary>The chance that a player makes the bank.</summary>
    Odds,

    /// <summary>How far the aim may be off, either way, from the middle of what makes the bank.</summary>
    Leeway,
}
