using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about a ball's stripe.</summary>
public sealed record SceneStripe
{
    /// <summary>The axis about which the stripe runs, three numbers of any length but 0.</summary>
    public Quantity[]? Axis { get; internal set; }
}
