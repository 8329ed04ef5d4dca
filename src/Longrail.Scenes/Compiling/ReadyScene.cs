using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Scenes.Compiling;

/// <summary>A scene made ready to be played: every default filled in, every quantity in SI, the aim solved, the tip's
/// work done.</summary>
public sealed class ReadyScene
{
    internal ReadyScene(
        Scene asked, Scene asUsed, ShotSetup setup, IReadOnlyList<string> ballIds, IReadOnlyList<Vec3?>? stripeAxes)
    {
        Asked = asked;
        AsUsed = asUsed;
        Setup = setup;
        BallIds = ballIds;
        StripeAxes = stripeAxes;
    }

    /// <summary>The scene as it was asked for. A comparison changes fields of this one.</summary>
    public Scene Asked { get; }

    /// <summary>The scene as it is used, with nothing left to defaults. Made ready again it gives the same shot, bit
    /// for bit.</summary>
    public Scene AsUsed { get; }

    /// <summary>The shot for the physics.</summary>
    public ShotSetup Setup { get; }

    /// <summary>The balls' names, in the order of the set-up.</summary>
    public IReadOnlyList<string> BallIds { get; }

    /// <summary>For each ball the unit axis about which its stripe runs at the start, or null; null if no ball has a
    /// stripe.</summary>
    public IReadOnlyList<Vec3?>? StripeAxes { get; }

    /// <summary>The place of a ball in the set-up, or -1.</summary>
    /// <param name="id">The ball's name.</param>
    public int IndexOf(string id)
    {
        for (int i = 0; i < BallIds.Count; i++)
        {
            if (BallIds[i] == id)
                return i;
        }

        return -1;
    }
}
