using Longrail.Coaching.Charts;
using Longrail.Drawing.Sheets;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots.Readings;

namespace Longrail.Drawing.Charts;

/// <summary>The words around a chart or a map.</summary>
internal static class ChartFrame
{
    /// <summary>The rows of the title block.</summary>
    internal static List<(string Name, string Value)> Rows(
        EquipmentSpec equipment, EquipmentNames names, double reduction, DateOnly? date, DiamondNumbering numbering)
    {
        List<(string Name, string Value)> rows = EquipmentWords.Rows(equipment, names.Table, reduction, date);
        for (int k = 0; k < rows.Count; k++)
        {
            rows[k] = rows[k] switch
            {
                ("CLOTH", var value) when names.Cloth is { } state => ("CLOTH", $"{state}: {value}"),
                ("BALLS", var value) when names.Balls is { } state => ("BALLS", $"{state}: {value}"),
                ("DIAMONDS", _) => ("DIAMONDS", DiamondNumbers.Sentence(numbering) + ":"),
                ("SCALE", var value) => ("SCALE", $"table {value}"),
                var row => row,
            };
        }

        return rows;
    }

    /// <summary>A sentence's first letter made a capital.</summary>
    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
