namespace Longrail.Drawing.Sheets;

/// <summary>Where two balls are nearest to meeting again.</summary>
/// <param name="Cue">The cue ball then.</param>
/// <param name="Ball">The object ball then.</param>
/// <param name="Words">The clear distance: "12 mm", or "kiss".</param>
internal sealed record KissMark(TablePoint Cue, TablePoint Ball, string Words);
