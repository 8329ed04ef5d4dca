namespace Longrail.Cli.Tests.Verbs;

public sealed class UsageTests
{
    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    public void Help_names_the_verbs(string option)
    {
        CliRun run = CliRun.Of("", option);
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.Contains("shoot <FILE>", run.Output);
        Assert.Contains("longrail shoot scenes/", run.Output);
        Assert.Empty(run.Error);
    }

    [Fact]
    public void Help_of_a_verb_tells_its_options()
    {
        CliRun run = CliRun.Of("", "shoot", "--help");
        Assert.Equal(ExitCode.Done, run.ExitCode);
        Assert.All(
            ["--json", "--lines", "--picture <NAME>", "--until <SECONDS>"],
            option => Assert.Contains(option, run.Output));
    }

    [Fact]
    public void The_scenes_that_help_names_exist()
    {
        string help = CliRun.Of("", "shoot", "--help").Output;
        string[] named = [.. help.Split([' ', '\n']).Where(word => word.StartsWith("scenes/")).Distinct()];
        Assert.NotEmpty(named);
        Assert.All(named, scene => Assert.True(File.Exists(Path.Combine(CliRun.Root, scene)), scene));
    }

    [Fact]
    public void The_version_is_told() => Assert.Matches(@"^\d+\.\d+\.\d+\s*$", CliRun.Of("", "--version").Output);

    [Theory]
    [InlineData("shot x", "shot")]
    [InlineData("shoot", "FILE")]
    [InlineData("shoot x y", "'y'")]
    [InlineData("shoot x --jsn", "jsn")]
    [InlineData("shoot x --until soon", "\"soon\"; allowed: a number of seconds")]
    [InlineData("shoot x --until 0", "more than 0")]
    [InlineData("shoot x --until nan", "more than 0")]
    [InlineData("shoot x --until", "until")]
    [InlineData("shoot - --lines --picture x.svg", "cannot go with --lines")]
    public void Bad_usage_is_told_and_where_help_is(string args, string told)
    {
        CliRun run = CliRun.Of("", args.Split(' '));
        Assert.Equal(ExitCode.BadInput, run.ExitCode);
        Assert.Contains(told, run.Error);
        Assert.Contains("--help", run.Error);
        Assert.Empty(run.Output);
        Assert.DoesNotContain("   at ", run.Error);
    }
}
