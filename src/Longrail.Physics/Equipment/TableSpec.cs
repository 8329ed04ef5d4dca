namespace Longrail.Physics.Equipment;

/// <summary>A table's bed, nose to nose, and its pockets.</summary>
/// <param name="Length">Playing length from the head cushion's nose line to the foot's, metres, positive.</param>
/// <param name="Width">Playing width from the right cushion's nose line to the left's, metres, positive.</param>
/// <param name="Corner">The four corner pockets; null for a table without pockets.</param>
/// <param name="Side">The two side pockets; null for none.</param>
/// <param name="SightSetback">Distance of the sights (diamonds) behind the nose line, metres.</param>
/// <param name="Gravity">Acceleration of free fall, m/s^2, positive.</param>
public sealed record TableSpec(
    double Length,
    double Width,
    PocketSpec? Corner,
    PocketSpec? Side,
    double SightSetback = 0.0936625,
    double Gravity = 9.80665)
{
    /// <summary>The length of one diamond along the table (an eighth of the length), metres.</summary>
    public double DiamondAlong => Length / 8.0;

    /// <summary>The length of one diamond across the table (a quarter of the width), metres.</summary>
    public double DiamondAcross => Width / 4.0;
}
