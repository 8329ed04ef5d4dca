using System.Globalization;
using Longrail.Workbench.Tables;

namespace Longrail.Workbench.Tests.Tables;

/// <summary>Undo and redo.</summary>
public sealed class SceneHistoryTests
{
    [Fact]
    public void A_hundred_steps_can_be_taken_back_and_done_again()
    {
        var history = new SceneHistory();
        for (int k = 0; k <= 150; k++)
            history.Add(Link(k));
        for (int k = 149; k >= 50; k--)
            Assert.Equal(Link(k), history.Undo());
        Assert.Equal(Link(51), history.Redo());
    }

    [Fact]
    public void A_new_step_forgets_what_was_undone()
    {
        SceneHistory history = Of("a", "b", "c");
        history.Undo();
        history.Add("d");
        Assert.Equal(["a", "b", "d"], history.Links);
        Assert.False(history.CanRedo);
    }

    [Fact]
    public void The_same_table_twice_is_one_step() => Assert.Equal(["a", "b"], Of("a", "b", "b").Links);

    [Fact]
    public void A_row_of_nudges_is_one_step()
    {
        SceneHistory history = Of("a", "b");
        history.Replace("c");
        history.Replace("d");
        Assert.Equal(["a", "d"], history.Links);
        Assert.Equal("a", history.Undo());
    }

    [Fact]
    public void The_oldest_steps_go_first_and_are_counted()
    {
        var history = new SceneHistory();
        for (int k = 0; k < SceneHistory.Most + 7; k++)
            history.Add(Link(k));
        Assert.Equal(SceneHistory.Most, history.Links.Count);
        Assert.Equal(7, history.Forgotten);
        Assert.Equal(Link(7), history.Links[0]);
    }

    [Fact]
    public void What_a_browser_says_it_remembers_is_not_trusted()
    {
        SceneHistory history = Of("a", "b");
        Assert.False(history.Restore([], 0));
        Assert.False(history.Restore(["x"], 1));
        Assert.False(history.Restore(["x"], -1));
        Assert.False(history.Restore([.. Enumerable.Repeat("x", SceneHistory.Most + 1)], 0));
        Assert.False(history.Restore([new string('x', SceneLink.Longest + 1)], 0));
        Assert.Equal("b", history.Current);
        Assert.True(history.Restore(["x", "y", "z"], 1));
        Assert.Equal(("y", true, true), (history.Current, history.CanUndo, history.CanRedo));
    }

    private static SceneHistory Of(params string[] links)
    {
        var history = new SceneHistory();
        foreach (string link in links)
            history.Add(link);
        return history;
    }

    private static string Link(int k) => "1." + k.ToString(CultureInfo.InvariantCulture);
}
