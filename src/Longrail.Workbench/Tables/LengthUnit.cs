namespace Longrail.Workbench.Tables;

/// <summary>The unit in which lengths and places on the table are shown and typed.</summary>
internal enum LengthUnit
{
    /// <summary>Diamonds along and across.</summary>
    Diamonds,

    /// <summary>Inches.</summary>
    Inches,

    /// <summary>Centimetres.</summary>
    Centimetres,
}
