namespace Longrail.Drawing;

/// <summary>The paper that a sheet for the table is printed on, upright.</summary>
public enum Paper
{
    /// <summary>210 x 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8 1/2 x 11 in.</summary>
    Letter,
}
