namespace Longrail.Drawing.Sheets;

/// <summary>One line of the key under a drawing.</summary>
/// <param name="Number">The number that stands in a circle on the drawing.</param>
/// <param name="Time">When it happens, seconds.</param>
/// <param name="At">Where the label belongs.</param>
/// <param name="Beside">Where the label would best stand, seen from there, on the sheet; zero for no
/// preference.</param>
/// <param name="What">What happens: "9, right cushion".</param>
/// <param name="Reading">What was read off, in trade words.</param>
internal sealed record KeyRow(int Number, double Time, TablePoint At, SvgPoint Beside, string What, string Reading);
