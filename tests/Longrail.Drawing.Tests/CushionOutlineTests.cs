using Longrail.Drawing.Tables;
using Longrail.Physics.Equipment;
using Longrail.Physics.Geometry;

namespace Longrail.Drawing.Tests;

public class CushionOutlineTests
{
    private static readonly TableSpec _pool = SyntheticShot.Pool;

    // Definitions of mouth, cut angle and rounding: PocketSpec; the mouth as in the WPA equipment specifications.
    [Fact]
    public void Without_roundings_the_mouths_are_as_wide_as_specified()
    {
        TableSpec sharp = _pool with
        {
            Corner = _pool.Corner! with { JawRadius = 0 },
            Side = _pool.Side! with { JawRadius = 0 },
        };
        // Without a rounding a piece has four points: facing, jaw point, jaw point, facing.
        CushionOutline[] pieces = AllOf(sharp);
        Vec2[] jawPoints = [.. pieces.SelectMany(p => new[] { p.Nose[1].ToVec2(), p.Nose[2].ToVec2() })];
        double[] nearest = [.. jawPoints.Select(a => jawPoints.Where(b => b != a).Min(b => a.DistanceTo(b)))];

        Assert.Equal(12, jawPoints.Length);
        Assert.Equal(8, nearest.Count(d => Math.Abs(d - sharp.Corner!.Mouth) < 1e-12));
        Assert.Equal(4, nearest.Count(d => Math.Abs(d - sharp.Side!.Mouth) < 1e-12));
    }

    [Fact]
    public void The_facing_leaves_at_the_cut_angle_measured_through_the_rubber()
    {
        foreach (CushionOutline piece in AllOf(_pool))
        {
            // Ten points at each end: the facing's end, then the rounding; the nose line runs from the tenth to the
            // eleventh.
            Vec2 facing = (piece.Nose[0].ToVec2() - piece.Nose[1].ToVec2()).Normalized();
            Vec2 nose = (piece.Nose[10].ToVec2() - piece.Nose[9].ToVec2()).Normalized();
            double cut = Math.Acos(Math.Clamp(facing.Dot(nose), -1, 1));
            bool corner = piece.Nose[0].ToVec2().DistanceTo(new Vec2(1.27, piece.Nose[0].Y)) > 0.3;
            Assert.Equal(corner ? _pool.Corner!.CutAngle : _pool.Side!.CutAngle, cut, 9);
        }
    }

    [Fact]
    public void The_rounding_touches_nose_line_and_facing_without_a_kink()
    {
        foreach (CushionOutline piece in AllOf(_pool))
        {
            // Turns between neighbouring strokes: none sharper than the step of the rounding itself.
            double step = Math.Max(Math.PI - _pool.Corner!.CutAngle, Math.PI - _pool.Side!.CutAngle) / 8;
            for (int i = 1; i + 1 < piece.Nose.Count; i++)
            {
                Vec2 before = (piece.Nose[i].ToVec2() - piece.Nose[i - 1].ToVec2()).Normalized();
                Vec2 after = (piece.Nose[i + 1].ToVec2() - piece.Nose[i].ToVec2()).Normalized();
                Assert.InRange(Math.Abs(Math.Asin(before.Cross(after))), 0, 1.01 * step);
            }
        }
    }

    [Fact]
    public void A_table_without_pockets_has_four_whole_nose_lines()
    {
        CushionOutline[] pieces = AllOf(SyntheticShot.Carom);

        Assert.Equal(4, pieces.Length);
        Assert.All(pieces, piece => Assert.Equal(2, piece.Nose.Count));
        Assert.Equal(
            [1.42, 1.42, 2.84, 2.84],
            pieces.Select(p => Math.Round(p.Nose[0].ToVec2().DistanceTo(p.Nose[1].ToVec2()), 12)));
    }

    private static CushionOutline[] AllOf(TableSpec table) =>
        [.. new TableOutline(table).Pieces.Select(CushionOutline.Of)];
}
