namespace Longrail.Coaching.Charts;

/// <summary>A place of the tip to the side.</summary>
/// <param name="Right">Where tip and ball touch, to the right of the ball's centre, metres.</param>
/// <param name="Text">As it was asked for: "1/8 tip".</param>
public readonly record struct ChartTip(double Right, string Text);
