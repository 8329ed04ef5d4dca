using Longrail.Physics.Equipment;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the aim: an angle, or a task to which an angle is to be found.</summary>
public sealed record SceneAim
{
    /// <summary>The direction of the stick, counter-clockwise from +x; null if a task is given.</summary>
    public Quantity? Angle { get; internal set; }

    /// <summary>The id of the ball to be cut.</summary>
    public string? At { get; internal set; }

    /// <summary>The cut angle, positive to the left.</summary>
    public Quantity? Cut { get; internal set; }

    /// <summary>The id of the ball to be banked.</summary>
    public string? Bank { get; internal set; }

    /// <summary>The pocket for the bank.</summary>
    public PocketName? To { get; internal set; }

    /// <summary>The cushions of the bank in order.</summary>
    public List<CushionName>? Off { get; internal set; }

    /// <summary>The angle that was found for the task before; it is taken as it stands and nothing is solved
    /// again.</summary>
    public Quantity? Solved { get; internal set; }

    internal SceneAim Copy() => this with { Off = Off is null ? null : [.. Off] };
}
