namespace Longrail.Scenes.Parts;

/// <summary>What a scene says about the pockets: a word, or their shape.</summary>
public sealed record ScenePockets
{
    /// <summary>The word for the pockets of the table's preset.</summary>
    public const string Standard = "standard";

    /// <summary>The word for a plain rectangle.</summary>
    public const string None = "none";

    /// <summary>"standard" or "none"; null if their shape is given.</summary>
    public string? Word { get; internal set; }

    /// <summary>The corner pockets.</summary>
    public ScenePocket? Corner { get; internal set; }

    /// <summary>The side pockets.</summary>
    public ScenePocket? Side { get; internal set; }

    internal ScenePockets Copy() => this with
    {
        Corner = Corner is null ? null : Corner with { },
        Side = Side is null ? null : Side with { },
    };
}
