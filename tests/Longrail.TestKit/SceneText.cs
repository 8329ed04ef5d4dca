using System.Globalization;
using System.Text;
using Longrail.Physics.Shots;

namespace Longrail.TestKit;

/// <summary>Writes a shot out so that a failing case can be read and built again.</summary>
public static class SceneText
{
    /// <summary>Equipment and balls, numbers round-trip exact.</summary>
    public static string Describe(ShotSetup setup)
    {
        ArgumentNullException.ThrowIfNull(setup);
        StringBuilder text = new();
        text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"{setup.Equipment.Table}"));
        text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"{setup.Equipment.Cushion}"));
        text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"{setup.Equipment.Cloth}"));
        text.AppendLine(string.Create(CultureInfo.InvariantCulture, $"{setup.Equipment.BallSet}"));
        foreach (ShotBall ball in setup.Balls)
            text.AppendLine($"at {ball.Start.Position} going {ball.Start.Velocity} turning {ball.Start.Spin}");
        return text.ToString();
    }
}
