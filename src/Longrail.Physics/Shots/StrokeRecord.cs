using Longrail.Physics.Contacts;

namespace Longrail.Physics.Shots;

/// <summary>The stroke that started a shot, kept for its readings; its effect is already in the ball's start
/// state.</summary>
/// <param name="Ball">Index of the ball that was struck.</param>
/// <param name="Stroke">The stroke.</param>
/// <param name="Result">What the tip gave the ball.</param>
public sealed record StrokeRecord(int Ball, Stroke Stroke, TipResult Result);
