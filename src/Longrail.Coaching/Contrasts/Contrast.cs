using Longrail.Physics.Geometry;

namespace Longrail.Coaching.Contrasts;

/// <summary>A comparison in which one thing changes and the rest is held.</summary>
public sealed record Contrast
{
    /// <summary>The words that mark a comparison in which not one thing but two are changed.</summary>
    public const string TwoThingsMark = "two things changed";

    /// <summary>The question.</summary>
    public required ContrastRequest Request { get; init; }

    /// <summary>The rows: the base first, then the levels in the order in which they were asked for; a level that
    /// equals the base is not listed again.</summary>
    public required IReadOnlyList<ContrastRow> Rows { get; init; }

    /// <summary>The balls' names in the order of the traces.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>The balls' stripe axes, or null if no ball has a stripe.</summary>
    public required IReadOnlyList<Vec3?>? StripeAxes { get; init; }

    /// <summary>The base.</summary>
    public ContrastRow Base => Rows[0];

    /// <summary>Whether two fields are varied.</summary>
    public bool VariesTwoThings => Request.Variations.Count > 1;

    /// <summary>The title of the scene, or an empty text.</summary>
    public string Title => Request.Scene.Title ?? "";
}
