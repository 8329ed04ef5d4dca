using Longrail.Coaching.Statistics;

namespace Longrail.Coaching.Ways;

/// <summary>How near cue ball and object ball come after they part, over a player's strokes.</summary>
/// <param name="Gap">At the stroke as meant, metres; 0 where they meet again.</param>
/// <param name="Low">The gap below which one stroke in twenty stays, metres.</param>
/// <param name="High">The gap above which one stroke in twenty goes, metres.</param>
/// <param name="Kisses">How often they meet again.</param>
public sealed record KissSpread(double Gap, double Low, double High, Odds Kisses);
