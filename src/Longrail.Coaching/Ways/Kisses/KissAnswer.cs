namespace Longrail.Coaching.Ways.Kisses;

/// <summary>The ways round a double kiss.</summary>
/// <param name="Gap">The kiss gap of the stroke as it was, metres; 0 where it kisses; null if the two balls never meet
/// or never part.</param>
/// <param name="Kisses">Whether it kisses.</param>
/// <param name="Escapes">The changes that clear it, the smallest first, at most one of a kind; empty if none does, or
/// if the stroke is clear as it is.</param>
public sealed record KissAnswer(double? Gap, bool Kisses, IReadOnlyList<KissEscape> Escapes);
