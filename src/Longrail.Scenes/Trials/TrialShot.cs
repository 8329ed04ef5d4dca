namespace Longrail.Scenes.Trials;

/// <summary>One shot of a trial, as it was written down. What was not read is null.</summary>
/// <param name="Line">Line of the table, from 1.</param>
/// <param name="Number">Its number on the sheet, from 1; its place in the table where the table has no numbers.</param>
/// <param name="Condition">Index of its condition.</param>
/// <param name="Landing">Where the ball came to the far cushion, metres along it from the head or from the
/// right.</param>
/// <param name="Speed">Speed of the stroke, m/s; where the table has a roll-out instead, that distance in
/// metres.</param>
/// <param name="Made">Whether the ball went down.</param>
public sealed record TrialShot(int Line, int Number, int Condition, double? Landing, double? Speed, bool? Made);
