namespace Longrail.Coaching.Trials;

/// <summary>One shot of a trial's order.</summary>
/// <param name="Shot">Its number, from 1.</param>
/// <param name="Block">The block that it belongs to, from 0: the conditions are dealt out within it.</param>
/// <param name="Condition">Index of the condition.</param>
public readonly record struct TrialTurn(int Shot, int Block, int Condition);
