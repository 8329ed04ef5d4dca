using Longrail.Physics.Equipment;

namespace Longrail.Physics.Contacts;

/// <summary>Tip on ball: what a stroke gives the ball it strikes.</summary>
public static class TipContact
{
    /// <summary>The ball's velocity and spin after a stroke.</summary>
    public static TipResult Strike(Stroke stroke, double ballRadius, double ballMass, CueSpec cue) => throw new NotImplementedException();
}
