using System.Text;
using Longrail.Cli.Input;
using Longrail.Cli.Verbs;
using Longrail.Cli.Verbs.Trials;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Longrail.Cli;

/// <summary>The program as a function, so that tests can run it in their own process.</summary>
public static class LongrailApp
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="streams">What it reads from and writes to.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, ProgramStreams streams)
    {
        // What the library itself prints (help, the version) goes the same way as everything else.
        using var output = new StreamWriter(streams.Output, new UTF8Encoding(false), leaveOpen: true);
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.SetApplicationName("longrail");
            config.SetApplicationVersion(Version());
            config.UseStrictParsing();
            config.PropagateExceptions();
            config.ConfigureConsole(PlainConsole.On(output));
            AddVerbs(config, streams);
        });
        try
        {
            return app.Run(args.Select(SceneInput.Disguise));
        }
        catch (CommandAppException usage)
        {
            streams.Error.WriteLine($"longrail: {SceneInput.Undisguise(usage.Message)}");
            streams.Error.WriteLine("longrail: try longrail --help, or longrail VERB --help");
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException) when (streams.Interrupted.IsCancellationRequested)
        {
            return ExitCode.Interrupted;
        }
    }

    private static void AddVerbs(IConfigurator config, ProgramStreams streams)
    {
        config.AddCommand<ShootCommand>("shoot").WithData(streams).WithDescription(ShootCommand.Description)
            .WithExample("shoot", "scenes/bank-alone-firm.json")
            .WithExample("shoot", "scenes/bank-alone-firm.json", "--picture", "bank.svg")
            .WithExample("shoot", "-", "--lines");
        config.AddCommand<ContrastCommand>("contrast").WithData(streams).WithDescription(ContrastCommand.Description)
            .WithExample("contrast", "scenes/bank-alone-firm.json", "--vary", "stroke.speed=\"1.2 m/s,2.5 m/s,4.5 m/s\"")
            .WithExample(
                "contrast", "scenes/bank-alone-firm.json", "--vary", "stroke.tip.right=\"-1/8 tip,0,1/8 tip\"", "--hold", "path");
        config.AddCommand<ChartCommand>("chart").WithData(streams).WithDescription(ChartCommand.Description)
            .WithExample("chart", "--bank", "cross-side")
            .WithExample("chart", "--bank", "kick", "--target", "6,2", "--picture", "kick.pdf")
            .WithExample("chart", "--bank", "cross-side", "--map", "odds", "--player", "club", "--picture", "map.png");
        config.AddCommand<WaysCommand>("ways").WithData(streams).WithDescription(WaysCommand.Description)
            .WithExample("ways", "scenes/layouts/which-bank.json", "--ball", "9", "--next", "8")
            .WithExample(
                "ways", "scenes/layouts/which-bank.json", "--ball", "9", "--rails", "1..2", "--kick-rails", "0", "--picture", "ways.svg");
        config.AddCommand<EffectsCommand>("effects").WithData(streams).WithDescription(EffectsCommand.Description)
            .WithExample("effects", "scenes/first-bank.json", "--picture", "effects.svg")
            .WithExample("effects", "scenes/two-cushion-bank.json", "--unit", "mm");
        AddTrial(config, streams);
    }

    private static void AddTrial(IConfigurator config, ProgramStreams streams) => config.AddBranch("trial", trial =>
    {
        trial.SetDescription("Compare conditions on a real table: plan the shots, print the order, weigh the results");
        trial.AddCommand<TrialPlanCommand>("plan").WithData(streams).WithDescription(TrialPlanCommand.Description)
            .WithExample("trial", "plan", "scenes/trials/clean-or-dirty.json", "--vary", "ballSet.state=clean,dirty");
        trial.AddCommand<TrialSheetCommand>("sheet").WithData(streams).WithDescription(TrialSheetCommand.Description)
            .WithExample("trial", "sheet", "plan.json", "--picture", "sheet.pdf", "--results", "results.csv");
        trial.AddCommand<TrialWeighCommand>("weigh").WithData(streams).WithDescription(TrialWeighCommand.Description)
            .WithExample("trial", "weigh", "results.csv", "--plan", "plan.json", "--picture", "weighed.svg");
    });

    private static string Version() =>
        typeof(LongrailApp).Assembly.GetName().Version?.ToString(fieldCount: 3) ?? "";
}
