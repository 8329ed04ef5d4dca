using Longrail.Physics.Motion;
using Longrail.Scenes.Reading;
using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Tests.Tables;

/// <summary>The table of one open page.</summary>
public sealed class OpenTableTests : IDisposable
{
    private readonly AimQueue _queue = new();
    private readonly OpenTable _table;

    public OpenTableTests()
    {
        _table = new OpenTable(_queue);
        _table.Open(SampleScenes.Opening);
    }

    public void Dispose()
    {
        _table.Dispose();
        _queue.Dispose();
    }

    [Fact]
    public async Task The_opening_scene_is_a_bank_that_is_made()
    {
        await FoundAsync();
        Assert.Null(_table.NoAim);
        Assert.Equal(MotionPhase.Pocketed, _table.Outcome!.Trace.Balls[1].Phase);
    }

    [Fact]
    public async Task While_a_ball_is_dragged_the_stick_stays_and_when_it_is_dropped_the_aim_is_found_anew()
    {
        await FoundAsync();
        double aim = Aim;
        Assert.True(_table.Change(TableStep.Try, ("balls.9.along", "2.9"), ("balls.9.across", "1.2")));
        Assert.True(_table.IsTrying);
        Assert.Equal(aim, Aim);
        Assert.Single(_table.History.Links);
        _table.Settle();
        await FoundAsync();
        Assert.NotEqual(aim, Aim);
        Assert.Equal(2, _table.History.Links.Count);
        Assert.Equal(MotionPhase.Pocketed, _table.Outcome!.Trace.Balls[1].Phase);
    }

    [Fact]
    public async Task A_drag_that_is_given_up_leaves_no_trace()
    {
        await FoundAsync();
        string before = SceneLink.Of(_table.Scene);
        _table.Change(TableStep.Try, ("balls.9.along", "5"));
        _table.GiveUp();
        Assert.Equal(before, SceneLink.Of(_table.Scene));
        Assert.False(_table.IsTrying);
        Assert.Single(_table.History.Links);
    }

    [Fact]
    public async Task What_cannot_be_is_refused_in_words_and_changes_nothing()
    {
        await FoundAsync();
        string before = SceneLink.Of(_table.Scene);
        Assert.False(_table.Change(TableStep.Add, ("balls.9.x", "0.508 m"), ("balls.9.y", "0.69 m")));
        Assert.Contains("overlaps", Assert.Single(_table.Refused).Problem, StringComparison.Ordinal);
        Assert.Equal(before, SceneLink.Of(_table.Scene));
        Assert.True(_table.Change(TableStep.Add, ("stroke.speed", "3")));
        Assert.Empty(_table.Refused);
    }

    [Fact]
    public async Task Without_an_aim_the_balls_stand_and_the_reason_is_said()
    {
        Assert.True(_table.Change(TableStep.Add, ("stroke.aim", """{"bank":"9","to":"right-side","off":["right"]}""")));
        await FoundAsync();
        Assert.NotNull(_table.NoAim);
        Assert.Empty(_table.Outcome!.Trace.Events);
        Assert.Equal(2, _table.Outcome.Trace.Setup.Balls.Count);
    }

    [Fact]
    public async Task A_held_line_stays_when_anything_else_changes()
    {
        await FoundAsync();
        double aim = Aim;
        _table.Change(TableStep.Add, ("stroke.aim.solved", aim.ToString("R")));
        Assert.False(_table.FindsAnew);
        _table.Change(TableStep.Add, ("stroke.speed", "4"));
        Assert.False(_table.IsFinding);
        Assert.Equal(aim, Aim);
    }

    [Fact]
    public void A_file_that_cannot_be_read_leaves_the_table()
    {
        string before = SceneLink.Of(_table.Scene);
        _table.Open(SceneReader.Read("{"));
        Assert.NotEmpty(_table.Refused);
        Assert.Equal(before, SceneLink.Of(_table.Scene));
    }

    [Fact]
    public async Task A_search_that_is_overtaken_says_nothing()
    {
        await FoundAsync();
        _table.Change(TableStep.Add, ("balls.9.along", "2.9"));
        Assert.True(_table.IsFinding);
        _table.Change(TableStep.Add, ("stroke.aim", "10 deg"));
        Assert.False(_table.IsFinding);
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.Equal(10 * Math.PI / 180, Aim, 12);
    }

    private double Aim => _table.Outcome!.Scene.Setup.Stroke!.Stroke.Aim;

    private async Task FoundAsync()
    {
        for (int k = 0; k < 400 && _table.IsFinding; k++)
            await Task.Delay(25, TestContext.Current.CancellationToken);
        Assert.False(_table.IsFinding, "the search did not end within ten seconds");
    }
}
