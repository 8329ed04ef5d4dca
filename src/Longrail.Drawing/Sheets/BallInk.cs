using Longrail.Drawing.Svg;

namespace Longrail.Drawing.Sheets;

/// <summary>Which colour each ball of a single shot is drawn in: the struck ball in pencil, the others in
/// order.</summary>
internal static class BallInk
{
    internal static IReadOnlyList<string> Assign(int count, int? struck)
    {
        var colours = new string[count];
        int next = 0;
        for (int ball = 0; ball < count; ball++)
            colours[ball] = ball == struck ? Ink.Graphite : Ink.Colours[next++ % Ink.Colours.Count];
        return colours;
    }
}
