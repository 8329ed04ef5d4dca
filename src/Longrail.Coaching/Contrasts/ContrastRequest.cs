using Longrail.Scenes;

namespace Longrail.Coaching.Contrasts;

/// <summary>A question of the form "what changes if only this changes".</summary>
/// <param name="Scene">The scene as it is: the base of the comparison.</param>
/// <param name="Variations">What is changed: one field, or two, which is then marked wherever it is shown.</param>
/// <param name="Hold">What stays the same.</param>
public sealed record ContrastRequest(Scene Scene, IReadOnlyList<Variation> Variations, Hold Hold = Hold.Stick);
