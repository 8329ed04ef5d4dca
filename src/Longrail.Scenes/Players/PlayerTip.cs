using Longrail.Scenes.Units;

namespace Longrail.Scenes.Players;

/// <summary>What a player file says about where the tip strikes.</summary>
public sealed record PlayerTip
{
    /// <summary>Standard deviation of the contact to the side, metres.</summary>
    public Quantity? Across { get; internal set; }

    /// <summary>Standard deviation of the contact up and down, metres.</summary>
    public Quantity? Up { get; internal set; }
}
