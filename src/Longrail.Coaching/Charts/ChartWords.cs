namespace Longrail.Coaching.Charts;

/// <summary>The words of charts: for requests, files, tables and pictures.</summary>
public static class ChartWords
{
    private static readonly string[] _kinds = ["cross-side", "cross-corner", "long-rail", "kick"];
    private static readonly string[] _heights = ["stun", "follow", "centre"];
    private static readonly string[] _units = ["diamond", "mm", "in"];
    private static readonly string[] _measures = ["odds", "leeway"];

    private static readonly (string Name, string Sign, string Sentence)[] _reasons =
    [
        ("none", "", ""),
        ("too-near", "n", "too near: the ball is there already, or touches the cue ball"),
        ("touch-in-mouth", "m", "the point to touch lies in a pocket's mouth"),
        ("does-not-lead-there", "x", "no aim near the mirror line leads there"),
        ("too-thin", "t", "the hit would be too thin"),
        ("miscue", "c", "miscue: the tip would have to strike lower than it holds"),
        ("runs-out-of-speed", "s", "a ball stops before it gets there"),
        ("no-room-behind", "b", "the cue ball does not fit behind the ball"),
        ("double-kiss", "k", "double kiss"),
        ("scratch", "w", "the cue ball goes down"),
        ("jaw-turns-away", "j", "a jaw turns it away at that angle"),
    ];

    /// <summary>The banks, in the order of <see cref="BankKind"/>.</summary>
    public static IReadOnlyList<string> Kinds => _kinds;

    /// <summary>The heights of the tip, in the order of <see cref="CueHeight"/>.</summary>
    public static IReadOnlyList<string> Heights => _heights;

    /// <summary>The units, in the order of <see cref="ChartUnit"/>.</summary>
    public static IReadOnlyList<string> Units => _units;

    /// <summary>What a map may show, in the order of <see cref="MapMeasure"/>.</summary>
    public static IReadOnlyList<string> Measures => _measures;

    /// <summary>The names of the reasons in files, in the order of <see cref="NoBank"/>.</summary>
    public static IReadOnlyList<string> Reasons { get; } = [.. _reasons.Select(reason => reason.Name)];

    /// <summary>A bank's word.</summary>
    public static string Of(BankKind kind) => _kinds[(int)kind];

    /// <summary>A tip height's word.</summary>
    public static string Of(CueHeight height) => _heights[(int)height];

    /// <summary>A unit's word.</summary>
    public static string Of(ChartUnit unit) => _units[(int)unit];

    /// <summary>The word for what a map shows.</summary>
    public static string Of(MapMeasure measure) => _measures[(int)measure];

    /// <summary>The name of a reason in files.</summary>
    public static string Of(NoBank reason) => _reasons[(int)reason].Name;

    /// <summary>The sign that stands in a table where there is no number: one letter, or nothing.</summary>
    public static string Sign(NoBank reason) => _reasons[(int)reason].Sign;

    /// <summary>What the sign means.</summary>
    public static string Sentence(NoBank reason) => _reasons[(int)reason].Sentence;
}
