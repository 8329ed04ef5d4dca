using Longrail.Coaching.Ways;
namespace Longrail.Drawing;
/// <summary>Draws.</summary>
public static class WaysPicture
{
    /// <summary>Draws.</summary>
    public static string Draw(WaysAnswer answer) => "";
}
