namespace Longrail.Physics.Contacts;

/// <summary>A ball's motion in a cushion's frame: x along the nose line, y into the cushion, z up; spins as surface
/// speeds R w.</summary>
/// <param name="Vx">Speed along the nose line, m/s.</param>
/// <param name="Vy">Speed into the cushion, m/s.</param>
/// <param name="Ax">R w_x, m/s.</param>
/// <param name="Ay">R w_y, m/s.</param>
/// <param name="Az">R w_z, m/s.</param>
internal readonly record struct LocalMotion(double Vx, double Vy, double Ax, double Ay, double Az)
{
    internal double Largest => Math.Max(
        Math.Max(Math.Abs(Vx), Math.Abs(Vy)), Math.Max(Math.Max(Math.Abs(Ax), Math.Abs(Ay)), Math.Abs(Az)));

    internal LocalMotion Plus(in LocalMotion rate, double h) =>
        new(Vx + h * rate.Vx, Vy + h * rate.Vy, Ax + h * rate.Ax, Ay + h * rate.Ay, Az + h * rate.Az);

    /// <summary>Slip at the nose along the line and up the face.</summary>
    internal void NoseSlip(in NoseBedLaw law, out double along, out double up)
    {
        along = Vx + Ay * law.Sin - Az * law.Cos;
        up = Ax - Vy * law.Sin;
    }

    /// <summary>Slip at the bed.</summary>
    internal void BedSlip(out double along, out double into)
    {
        along = Vx - Ay;
        into = Vy + Ax;
    }

    /// <summary>Direction of the slip at the nose.</summary>
    internal void NoseDirection(in NoseBedLaw law, in StickModes modes, out double x, out double y)
    {
        NoseSlip(law, out x, out y);
        Direct(ref x, ref y, modes.NoseSetsOut, modes.Still, modes.NoseX, modes.NoseY);
    }

    /// <summary>Direction of the slip at the bed.</summary>
    internal void BedDirection(in StickModes modes, out double x, out double y)
    {
        BedSlip(out x, out y);
        Direct(ref x, ref y, modes.BedSetsOut, modes.Still, modes.BedX, modes.BedY);
    }

    private static void Direct(ref double x, ref double y, bool setsOut, double still, double settledX, double settledY)
    {
        double speed = Math.Sqrt(x * x + y * y);
        if (setsOut || speed <= still)
        {
            x = settledX;
            y = settledY;
            return;
        }

        double inverse = 1.0 / speed;
        x *= inverse;
        y *= inverse;
    }
}
