using Longrail.Coaching.Trials;
using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Trials;

/// <summary>From where a landing is measured.</summary>
internal static class TrialOrigin
{
    internal static string Of(TrialResult result) => result.Plan?.Target switch
    {
        null => "nose",
        CushionName.Head or CushionName.Foot => "right nose",
        _ => "head nose",
    };
}
