using Longrail.Scenes.Units;

namespace Longrail.Scenes.Players;

/// <summary>What a player file says: how far a player's strokes stray. Everything may be left out.</summary>
public sealed record PlayerFile
{
    /// <summary>The format of the file.</summary>
    public const string Format = "player/1";

    /// <summary>The format as the file names it.</summary>
    public string? FormatName { get; internal set; }

    /// <summary>What the player is called; a pseudonym will do.</summary>
    public string? Name { get; internal set; }

    /// <summary>Remarks for people.</summary>
    public string? Notes { get; internal set; }

    /// <summary>The level from which everything is taken that is not given.</summary>
    public PlayerLevel? Preset { get; internal set; }

    /// <summary>Standard deviation of the stick's direction, radians.</summary>
    public Quantity? Aim { get; internal set; }

    /// <summary>Standard deviation of the speed, as a part of the speed meant.</summary>
    public Quantity? Speed { get; internal set; }

    /// <summary>Where tip and ball touch.</summary>
    public PlayerTip? Tip { get; internal set; }

    /// <summary>Standard deviation of the stick's angle to the bed, radians.</summary>
    public Quantity? Elevation { get; internal set; }
}
