using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Scenes;

namespace Longrail.Coaching.Effects;

/// <summary>Where a ball arrives compared with the plain mirror bank of the same stroke, split into causes.</summary>
/// <remarks>
/// Amounts are along the target in the sense of <see cref="EffectTarget.Sense"/>, so that positive is long. The shares
/// and the remainder add up to the total. The remainder is what the shot has and the model of the parts has not: a jaw,
/// a second hit, a third ball; <see cref="Notes"/> name it.
/// </remarks>
public sealed record EffectBudget
{
    /// <summary>The scene as it was used, every number in SI and nothing left to defaults.</summary>
    public required Scene AsUsed { get; init; }

    /// <summary>The balls' names in the order of the trace.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>The shot.</summary>
    public required Trace Trace { get; init; }

    /// <summary>Index of the measured ball.</summary>
    public required int Ball { get; init; }

    /// <summary>Index of the ball that struck it; null if the tip did, or nothing.</summary>
    public required int? Striker { get; init; }

    /// <summary>The cushions that count, in order; empty for a ball sent straight to a pocket.</summary>
    public required IReadOnlyList<CushionName> Cushions { get; init; }

    /// <summary>Place among the trace's events of the contact after which the measured ball runs free to the target:
    /// its last cushion, or the hit.</summary>
    public required int LastContact { get; init; }

    /// <summary>Where arrivals are measured.</summary>
    public required EffectTarget Target { get; init; }

    /// <summary>Where the plain mirror bank arrives, metres along the target.</summary>
    public required double MirrorPlace { get; init; }

    /// <summary>Where the shot arrives, metres along the target; straight on if something came between.</summary>
    public required double Place { get; init; }

    /// <summary>Where the shot arrives by the model of the parts with every cause at work, metres along the
    /// target.</summary>
    public required double ModelPlace { get; init; }

    /// <summary>The causes and their shares.</summary>
    public required IReadOnlyList<EffectShare> Effects { get; init; }

    /// <summary>Causes that could not be switched off, because without them the shot has no arrival to compare; they
    /// are at work in the mirror bank too.</summary>
    public required IReadOnlyList<EffectKind> AlwaysOn { get; init; }

    /// <summary>The way of the plain mirror bank.</summary>
    public required EffectPath MirrorPath { get; init; }

    /// <summary>What must be said beside the numbers, each a whole sentence.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The title of the scene, or an empty text.</summary>
    public string Title => AsUsed.Title ?? "";

    /// <summary>The shot's arrival minus the mirror's, metres; positive is long.</summary>
    public double Total => Target.Sense * (Place - MirrorPlace);

    /// <summary>What the parts leave unexplained, metres: the shot minus the model of the parts.</summary>
    public double Remainder => Target.Sense * (Place - ModelPlace);

    /// <summary>What the effects of switching off one cause at a time leave of the parts' sum, metres: how much of it
    /// takes two causes or more.</summary>
    public double Interplay => Target.Sense * (ModelPlace - MirrorPlace) - Effects.Sum(effect => effect.AloneMetres);

    /// <summary>Whether half openings of a pocket can serve as a unit.</summary>
    public bool HasHalfOpenings => Target.HalfOpening is not null;
}
