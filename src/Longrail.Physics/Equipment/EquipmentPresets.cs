namespace Longrail.Physics.Equipment;

/// <summary>Equipment that scenes may ask for by name. Every number has its source beside it.</summary>
/// <remarks>
/// WPA: World Pool-Billiard Association, Tournament Table and Equipment Specifications (November 2001 text and later).
/// BCA: Billiard Congress of America, equipment specifications, the older text. UMB: Union Mondiale de Billard, World
/// Rules of Carom Billiard. Snooker: WPBSA, Official Rules of the Games of Snooker and English Billiards. "From memory"
/// marks a number of the trade for which no document was at hand; "assumption" marks our own choice. See
/// docs/sources.md.
/// </remarks>
public static partial class EquipmentPresets
{
    /// <summary>The table of a scene that does not name one.</summary>
    public static TablePreset DefaultTable => Tables[2];

    /// <summary>The state of balls that a scene does not name.</summary>
    public static BallCondition DefaultBallCondition => BallConditions[1];

    /// <summary>The state of a cloth that a scene does not name.</summary>
    public static ClothCondition DefaultClothCondition => ClothConditions[1];

    /// <summary>The cue of a scene that does not name one.</summary>
    public static CuePreset DefaultCue => Cues[0];

    /// <summary>All that a shot on a table needs, as the table's preset brings it, with the default cushions and
    /// cue.</summary>
    /// <param name="table">The table.</param>
    public static EquipmentSpec With(TablePreset table) =>
        new(table.Table, table.Cloth, Cushion(table.NoseHeight), table.BallSet, DefaultCue.Cue);

    // Dividing last rounds once, so that the metres come out as the decimal numbers that one would write.
    private static double Inches(double inches) => inches * 254.0 / 10_000.0;
}
