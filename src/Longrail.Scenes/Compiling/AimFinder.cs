using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;

namespace Longrail.Scenes.Compiling;

/// <summary>Where scenes meet the solver of aims.</summary>
internal static class AimFinder
{
    /// <summary>The aim that cuts a ball by an angle.</summary>
    public static AimAnswer Cut(ShotSetup setup, int cueBall, int objectBall, double cut, Stroke template) => NotYet;

    /// <summary>The aim that banks a ball into a pocket.</summary>
    public static AimAnswer Bank(
        ShotSetup setup, int cueBall, int objectBall, PocketName to, IReadOnlyList<CushionName> off, Stroke template) =>
        NotYet;

    private static AimAnswer NotYet => new(null, "solved aims are not available yet; give the aim as an angle");
}
