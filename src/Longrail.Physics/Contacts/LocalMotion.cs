namespace Longrail.Physics.Contacts;

/// <summary>A ball's motion in a cushion's frame: x along the nose line, y into the cushion, z up; spins as surface speeds R w.</summary>
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

    internal void NoseDirection(in NoseBedLaw law, in StickModes modes, out double x, out double y)
    {
        NoseSlip(law, out double along, out double up);
        double speed = Math.Sqrt(along * along + up * up);
        if (speed > modes.Still)
        {
            x = along / speed;
            y = up / speed;
        }
        else
        {
            x = modes.NoseX;
            y = modes.NoseY;
        }
    }

    internal void BedDirection(in StickModes modes, out double x, out double y)
    {
        BedSlip(out double along, out double into);
        double speed = Math.Sqrt(along * along + into * into);
        if (speed > modes.Still)
        {
            x = along / speed;
            y = into / speed;
        }
        else
        {
            x = modes.BedX;
            y = modes.BedY;
        }
    }
}
