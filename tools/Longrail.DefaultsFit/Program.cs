// Fits the default cushion to the trade's anchors and prints the table that docs/physics.md shows.
//   dotnet run -c Release --project tools/Longrail.DefaultsFit            fit, then print
//   dotnet run -c Release --project tools/Longrail.DefaultsFit -- check   print what the committed defaults give
using System.Globalization;
using Longrail.Coaching.TableCards;
using Longrail.Physics.Equipment;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
EquipmentSpec preset = EquipmentPresets.With(EquipmentPresets.DefaultTable);
CushionSpec cushion = preset.Cushion;
if (args is not ["check"])
{
    // Restitution and friction are free; the contact time is held, because the anchors hardly feel it (see the last
    // line).
    var objective = ObjectiveFunction.Value(p => Cost(preset, With(cushion, p[0], p[1])));
    MinimizationResult fit = NelderMeadSimplex.Minimum(
        objective, Vector<double>.Build.Dense([0.9, 0.2]), Vector<double>.Build.Dense([0.03, 0.05]), 1e-7, 500);
    cushion = With(cushion, fit.MinimizingPoint[0], fit.MinimizingPoint[1]);
    Console.WriteLine($"fit: restitution {cushion.Restitution:0.0000}, friction {cushion.Friction:0.0000} ({fit.Iterations} steps, {fit.ReasonForExit})");
    Console.WriteLine();
}

Print(preset with { Cushion = cushion });
foreach (double time in new[] { 0.004, 0.006, 0.008, 0.010 })
{
    IReadOnlyList<Anchor> anchors = TradeAnchors.For(preset with { Cushion = cushion with { ContactTime = time } });
    Console.WriteLine($"contact time {1000 * time:0} ms: rms {TradeAnchors.RootMeanSquare(anchors):0.000} diamond");
}

return 0;

static CushionSpec With(CushionSpec cushion, double restitution, double friction) => cushion with
{
    Restitution = Math.Clamp(restitution, 0.5, 1.0),
    Friction = Math.Clamp(friction, 0.01, 0.6),
};

static double Cost(EquipmentSpec preset, CushionSpec cushion)
{
    double sum = 0;
    foreach (Anchor anchor in TradeAnchors.For(preset with { Cushion = cushion }))
    {
        double residual = double.IsNaN(anchor.Residual) ? 4 : anchor.Residual / anchor.Allowance;
        sum += residual * residual;
    }

    return sum;
}

static void Print(EquipmentSpec equipment)
{
    IReadOnlyList<Anchor> anchors = TradeAnchors.For(equipment);
    Console.WriteLine($"| anchor | trade | computed | off by | unit | |");
    Console.WriteLine("|---|---|---|---|---|---|");
    foreach (Anchor a in anchors)
        Console.WriteLine($"| {a.Name} | {a.Expected:0.000} | {a.Computed:0.000} | {a.Residual:+0.000;-0.000} | {a.Unit} | {(a.Holds ? "holds" : "off")} |");
    Console.WriteLine();
    Console.WriteLine($"rms over the anchors in diamonds: {TradeAnchors.RootMeanSquare(anchors):0.000}");
}
