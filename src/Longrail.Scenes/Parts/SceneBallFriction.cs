using Longrail.Scenes.Units;

namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the friction of ball on ball: mu(v) = base + gain exp(-decay v).</summary>
public sealed record SceneBallFriction
{
    /// <summary>Coefficient at high slip speed.</summary>
    public Quantity? Base { get; internal set; }

    /// <summary>What is added at zero slip.</summary>
    public Quantity? Gain { get; internal set; }

    /// <summary>How fast it falls with slip speed.</summary>
    public Quantity? Decay { get; internal set; }
}
