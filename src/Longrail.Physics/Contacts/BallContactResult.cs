namespace Longrail.Physics.Contacts;

/// <summary>What passed between two balls.</summary>
/// <param name="ClosingSpeed">Closing speed along the line of centres, m/s; 0 when they were not closing.</param>
/// <param name="SlipSpeed">Speed of one surface over the other, m/s.</param>
/// <param name="SlipAcross">Its horizontal part, to the left of the line from the first ball to the second,
/// m/s.</param>
/// <param name="SlipUp">Its vertical part, m/s.</param>
/// <param name="NormalImpulse">Impulse along the line of centres, N s.</param>
/// <param name="FrictionImpulse">Impulse across it, N s.</param>
/// <param name="Gripped">Whether the slip stopped during the contact.</param>
/// <param name="UpwardSpeed">Vertical speed that one of them would have got, m/s; it is not followed.</param>
public readonly record struct BallContactResult(
    double ClosingSpeed, double SlipSpeed, double SlipAcross, double SlipUp, double NormalImpulse, double FrictionImpulse,
    bool Gripped, double UpwardSpeed);
