using Longrail.Physics.Equipment;

namespace Longrail.Drawing.Sheets;

/// <summary>The rows of a title block that say what was assumed.</summary>
internal static class EquipmentWords
{
    internal static List<(string Name, string Value)> Rows(
        EquipmentSpec e, string? tableName, double reduction, DateOnly? date)
    {
        string pockets = (e.Table.Corner, e.Table.Side) switch
        {
            (null, null) => "no pockets",
            (null, _) => "side pockets",
            (_, null) => "corner pockets",
            _ => "six pockets",
        };
        string name = string.IsNullOrWhiteSpace(tableName) ? "" : tableName + ", ";
        string law = e.Cushion.Law == CushionLaw.Yielding ? "yielding" : "impulse";
        string when = date is { } d ? FormattableString.Invariant($", {d:yyyy-MM-dd}") : "";
        ClothSpec cloth = e.Cloth;
        BallSetSpec balls = e.BallSet;
        CushionSpec cushion = e.Cushion;
        string spin = Text($"spin {cloth.SpinDecay:0.##} rad/s²");
        string bounce = Text($"restitution {balls.Restitution:0.###}");
        return
        [
            ("TABLE", Text($"{name}{1000 * e.Table.Length:0.#} × {1000 * e.Table.Width:0.#} mm, {pockets}")),
            ("CLOTH", Text($"slide {cloth.SlidingFriction:0.###}, roll {cloth.RollingFriction:0.####}, {spin}")),
            ("CUSHION", Text($"{law} law, restitution {cushion.Restitution:0.###}, friction {cushion.Friction:0.###}")),
            ("BALLS", Text($"{1000 * balls.Diameter:0.##} mm, {1000 * balls.Mass:0.#} g, {bounce}")),
            ("DIAMONDS", "counted at the nose:"),
            ("", "along 0-8 from the head, across 0-4 from the right"),
            ("SCALE", Text($"1 : {reduction:0.##}{when}")),
        ];
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
