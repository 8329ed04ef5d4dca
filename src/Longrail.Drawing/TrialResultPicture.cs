using Longrail.Coaching.Trials;
using Longrail.Drawing.Trials;

namespace Longrail.Drawing;

/// <summary>Draws what came of a trial on one sheet: every shot, the differences with their intervals, and what it
/// comes to.</summary>
public static class TrialResultPicture
{
    /// <summary>The picture as SVG text, A4 across. A pure function: the same result gives the same text.</summary>
    /// <remarks>Each condition has a letter, a colour and a mark of its own, any of which is enough to tell
    /// it.</remarks>
    /// <param name="result">The weighed trial.</param>
    public static string Draw(TrialResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return TrialResultSheet.Draw(result);
    }
}
