using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;
using Longrail.Physics.Shots;

namespace Longrail.Scenes.Compiling;

/// <summary>Where on a table a ball may stand.</summary>
internal sealed class BallRoom(EquipmentSpec equipment)
{
    private TableOutline? _outline;

    /// <summary>Notes an error if a ball stands in a cushion, outside the table, or over a drop.</summary>
    public void Check(ShotBall ball, string path, string id, SceneErrors errors)
    {
        Vec2 p = ball.Start.Position;
        TableSpec table = equipment.Table;
        double reach = TableOutline.Reach(ball.Radius, equipment.Cushion.NoseHeight);

        // Between the four touch lines there is nothing to check.
        double toNose = Math.Min(Math.Min(p.X, table.Length - p.X), Math.Min(p.Y, table.Width - p.Y));
        if (toNose >= reach - BallCompiler.TouchSlack)
            return;

        _outline ??= new TableOutline(table);
        double least = double.PositiveInfinity;
        CushionName nearest = default;
        foreach (RubberPiece piece in _outline.Pieces)
        {
            double gap = piece.Gap(p, reach, out _);
            if (gap >= least)
                continue;
            least = gap;
            nearest = piece.Cushion;
        }

        string limits = $"x from {SceneErrors.Millimetres(reach)} to {SceneErrors.Millimetres(table.Length - reach)}, "
            + $"y from {SceneErrors.Millimetres(reach)} to {SceneErrors.Millimetres(table.Width - reach)}"
            + (_outline.Pockets.Length > 0 ? ", or within the mouth of a pocket" : "");
        if (least < -BallCompiler.TouchSlack)
        {
            string cushion = TableWords.Of(nearest);
            errors.Add(
                path,
                $"ball \"{id}\" stands {SceneErrors.Millimetres(-least)} too far over the {cushion} cushion",
                limits,
                // A ball a little too far over was probably meant to touch.
                -least < reach ? $"\"frozenTo\": \"{cushion}\"" : null);
            return;
        }

        foreach (PocketOutline pocket in _outline.Pockets)
        {
            bool overDrop = p.DistanceTo(pocket.DropCentre) < pocket.DropRadius;
            bool beyond = (p - pocket.DropCentre).Dot(pocket.Axis) > 0;
            if (overDrop || beyond)
            {
                string name = TableWords.Of(pocket.Name);
                errors.Add(path, $"ball \"{id}\" stands over the drop of the pocket {name}", limits);
                return;
            }
        }
    }
}
