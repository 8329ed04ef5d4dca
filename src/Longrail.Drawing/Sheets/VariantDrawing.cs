using Longrail.Drawing.Paths;

namespace Longrail.Drawing.Sheets;

/// <summary>One row of a comparison reduced to what is drawn of it.</summary>
internal sealed record VariantDrawing
{
    /// <summary>"base", or the variant's letter.</summary>
    internal required string Label { get; init; }

    /// <summary>Its colour and dashes; null for the base, which is a ghost.</summary>
    internal required VariantMark? Mark { get; init; }

    /// <summary>The cells of its row in the table.</summary>
    internal required IReadOnlyList<string> Cells { get; init; }

    internal required bool TwoThingsChanged { get; init; }

    /// <summary>The banked ball's way as far as its landing; null if neither ball touches a cushion.</summary>
    internal required BallTrack? Bank { get; init; }

    /// <summary>Whether the banked ball comes to rest there, before it lands.</summary>
    internal bool BankRests { get; init; }

    /// <summary>The cue ball's way; null if it is the banked ball, or nothing was struck.</summary>
    internal required BallTrack? Cue { get; init; }

    /// <summary>When the cue ball first meets a ball, seconds; +infinity if it does not.</summary>
    internal double CueMeets { get; init; } = double.PositiveInfinity;

    /// <summary>Where every ball starts.</summary>
    internal required IReadOnlyList<TablePoint> Starts { get; init; }

    /// <summary>Where the bank lands on the comparison's target, metres along it; null if elsewhere.</summary>
    internal double? Landing { get; init; }

    /// <summary>The difference from the base there: "0.42 longer"; empty for the base.</summary>
    internal string Difference { get; init; } = "";
}
