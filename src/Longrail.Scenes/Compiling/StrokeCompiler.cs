using System.Globalization;
using Longrail.Physics.Contacts;
using Longrail.Physics.Equipment;
using Longrail.Physics.Shots;
using Longrail.Scenes.Fields;
using Longrail.Scenes.Parts;
using Longrail.Scenes.Units;

namespace Longrail.Scenes.Compiling;

/// <summary>Turns what a scene says about the stroke into what the tip does to the ball.</summary>
internal sealed class StrokeCompiler(
    EquipmentSpec equipment, IReadOnlyList<string> ids, ShotBall[] balls, SceneErrors errors)
{
    /// <summary>The ball's speed when a scene gives none, m/s: a medium stroke.</summary>
    public const double DefaultSpeed = 2.0;

    /// <summary>The stroke and what it gave the ball, or null if anything is wrong with it.</summary>
    public StrokeRecord? Compile(SceneStroke asked)
    {
        int index = StruckBall(asked.Ball);
        if (index < 0)
            return null;
        ShotBall ball = balls[index];
        double right = Offset(asked.Tip?.Right, ball);
        double above = Offset(asked.Tip?.Above, ball);
        CheckMiscue(right, above, ball);
        if (asked.Speed is not null && asked.CueSpeed is not null)
            errors.Add("stroke", "both speed and cueSpeed are given", "one of the two");
        if (!errors.IsEmpty)
            return null;

        var stroke = new Stroke(0.0, 1.0, right, above, asked.Elevation?.Value ?? 0.0);
        stroke = stroke with { Speed = Speed(asked, stroke, ball) };
        CheckSpeeds(stroke, ball);
        if (!errors.IsEmpty)
            return null;
        if (Aim(asked.Aim, index, stroke) is not { } aim)
            return null;
        stroke = stroke with { Aim = aim };
        return new StrokeRecord(index, stroke, TipContact.Strike(stroke, ball.Radius, ball.Mass, equipment.Cue));
    }

    private int StruckBall(string? asked)
    {
        string id = asked ?? (IndexOf("cue") >= 0 ? "cue" : ids[0]);
        int index = IndexOf(id);
        if (index < 0)
            errors.Add("stroke.ball", $"there is no ball \"{id}\"", string.Join(", ", ids));
        return index;
    }

    private double Offset(Quantity? asked, ShotBall ball) => asked switch
    {
        null => 0.0,
        { Unit: RelativeUnit.BallRadius } part => part.Value * ball.Radius,
        { Unit: RelativeUnit.TipWidth } tips =>
            TipContact.ContactOffset(tips.Value * equipment.Cue.TipDiameter, ball.Radius, equipment.Cue),
        { } metres => metres.Value,
    };

    private void CheckMiscue(double right, double above, ShotBall ball)
    {
        double offset = Math.Sqrt(right * right + above * above) / ball.Radius;
        double limit = TipContact.MiscueLimit(equipment.Cue);
        if (offset <= limit && offset < 1.0)
            return;
        string too = SceneErrors.Millimetres((offset - Math.Min(limit, 1.0)) * ball.Radius);
        errors.Add(
            "stroke.tip",
            string.Create(
                CultureInfo.InvariantCulture,
                $"miscue: the tip meets the ball {offset:0.###} R from its centre, {too} too far"),
            string.Create(CultureInfo.InvariantCulture, $"up to {limit:0.###} R, which is what this tip holds"));
    }

    // The ball's speed is proportional to the stick's, so one stroke at unit speed tells the ratio.
    private double Speed(SceneStroke asked, Stroke unit, ShotBall ball)
    {
        if (asked.CueSpeed is not { } cueSpeed)
            return asked.Speed?.Value ?? DefaultSpeed;
        return cueSpeed.Value / TipContact.Strike(unit, ball.Radius, ball.Mass, equipment.Cue).CueSpeed;
    }

    // Far off the centre, or with the butt raised high, a moderate ball needs an impossible stick.
    private void CheckSpeeds(Stroke stroke, ShotBall ball)
    {
        double stick = TipContact.Strike(stroke, ball.Radius, ball.Mass, equipment.Cue).CueSpeed;
        if (stick > SceneFields.Fastest)
            AddTooFast("the stick", stick);
        if (stroke.Speed > SceneFields.Fastest)
            AddTooFast("the ball", stroke.Speed);
    }

    private void AddTooFast(string what, double speed) => errors.Add(
        "stroke",
        string.Create(CultureInfo.InvariantCulture, $"{what} would have to move at {speed:0.0} m/s"),
        string.Create(CultureInfo.InvariantCulture, $"up to {SceneFields.Fastest:0.#} m/s for ball and stick"));

    private double? Aim(SceneAim? asked, int cueBall, Stroke template)
    {
        if (asked is null)
            return 0.0;
        if (asked.Angle is { } angle)
            return angle.Value;
        int tasks = (asked.At is null ? 0 : 1) + (asked.Bank is null ? 0 : 1);
        if (tasks != 1)
        {
            errors.Add(
                "stroke.aim",
                tasks == 0 ? "neither at nor bank is given" : "both at and bank are given",
                "an angle, { \"at\": ..., \"cut\": ... }, or { \"bank\": ..., \"to\": ..., \"off\": [ ... ] }");
            return null;
        }

        string field = asked.At is null ? "bank" : "at";
        string target = asked.At ?? asked.Bank!;
        int objectBall = IndexOf(target);
        if (objectBall < 0 || objectBall == cueBall)
        {
            string problem = objectBall < 0
                ? $"there is no ball \"{target}\""
                : $"\"{target}\" is the ball that is struck";
            string others = string.Join(", ", ids.Where((_, i) => i != cueBall));
            errors.Add($"stroke.aim.{field}", problem, others.Length > 0 ? others : "a second ball on the table");
            return null;
        }

        if (asked.Bank is not null && (asked.To is null || asked.Off is null))
        {
            errors.Add(
                "stroke.aim",
                "a bank needs a pocket and its cushions",
                """{ "bank": ..., "to": a pocket, "off": [ cushions ] }""");
            return null;
        }

        if (asked.Bank is not null && equipment.Table.Corner is null)
        {
            errors.Add("stroke.aim.to", "this table has no pockets");
            return null;
        }

        return asked.Solved?.Value ?? Solve(asked, cueBall, objectBall, template);
    }

    private double? Solve(SceneAim asked, int cueBall, int objectBall, Stroke template)
    {
        var resting = new ShotSetup(equipment, balls);
        AimAnswer answer = new AimFinder(resting, ids, cueBall, objectBall).Find(asked, template);
        if (answer.Aim is null)
        {
            errors.Add("stroke.aim", answer.Reason);
            errors.IsUnreachable = true;
        }

        return answer.Aim;
    }

    private int IndexOf(string id)
    {
        for (int i = 0; i < ids.Count; i++)
        {
            if (ids[i] == id)
                return i;
        }

        return -1;
    }
}
