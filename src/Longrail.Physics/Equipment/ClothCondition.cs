namespace Longrail.Physics.Equipment;

/// <summary>The state of a cloth, as factors on the same cloth played in.</summary>
/// <param name="Name">The name by which a scene asks for it.</param>
/// <param name="Sliding">Factor on the sliding friction, positive.</param>
/// <param name="Rolling">Factor on the rolling friction, positive.</param>
/// <param name="Spin">Factor on the decay of spin about the vertical axis, positive.</param>
/// <param name="CushionFriction">Factor on the friction of the cushions, which wear the same cloth, positive.</param>
public sealed record ClothCondition(string Name, double Sliding, double Rolling, double Spin, double CushionFriction)
{
    /// <summary>The cloth in this state.</summary>
    /// <param name="cloth">The same cloth played in.</param>
    public ClothSpec Of(ClothSpec cloth) =>
        new(cloth.SlidingFriction * Sliding, cloth.RollingFriction * Rolling, cloth.SpinDecay * Spin);
}
