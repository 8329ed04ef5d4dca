using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>A row of the table under a drawing.</summary>
/// <param name="Label">Its letter, or "base".</param>
/// <param name="IsStrong">Whether it is one of those that are compared, not what they are compared with.</param>
/// <param name="Sample">The line in which it is drawn.</param>
/// <param name="Cells">Its cells; the first, which holds the label, is not drawn.</param>
internal sealed record KeyTableRow(string Label, bool IsStrong, Pen Sample, IReadOnlyList<string> Cells);
