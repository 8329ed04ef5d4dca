namespace Longrail.Physics.Contacts;

/// <summary>Angle of the tilted contact normal and the friction coefficients at nose and bed.</summary>
/// <param name="Sin">Sine of the tilt: (noseHeight - R)/R.</param>
/// <param name="Cos">Cosine of the tilt.</param>
/// <param name="NoseFriction">Ball on cushion.</param>
/// <param name="BedFriction">Ball on bed, sliding.</param>
internal readonly record struct NoseBedLaw(double Sin, double Cos, double NoseFriction, double BedFriction)
{
    internal static NoseBedLaw For(double radius, double noseHeight, double noseFriction, double bedFriction)
    {
        double sin = (noseHeight - radius) / radius;
        return new NoseBedLaw(sin, Math.Sqrt(Math.Max(0.0, 1.0 - sin * sin)), noseFriction, bedFriction);
    }
}
