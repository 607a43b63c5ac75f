using System.CommandLine;
using System.CommandLine.Help;
using System.Globalization;
using TrimOut.Screens.Terminal;
using TrimOut.Verbs;
using TrimOut.Verbs.Office;

namespace TrimOut;

/// <summary>All verbs of the program.</summary>
internal static class CommandLine
{
    /// <summary>What the program is for.</summary>
    public const string About =
        "TrimOut tracks the fitting of wired motorized window coverings, house by house, from the framing walk to the owner's binder. " +
        "Without a command it opens the house picker.\n\nA house is one .trimout file. " +
        $"Commands that only look also take a folder with a {HouseFile.Texts.HistoryText.FileName}.";

    /// <summary>The command line.</summary>
    public static RootCommand Build()
    {
        var root = new RootCommand($"{About}\n\nExit codes:\n".ReplaceLineEndings() +
            string.Join(Environment.NewLine, ExitCode.All.Select(c => string.Create(CultureInfo.InvariantCulture, $"  {c.Code,2}  {c.Meaning}"))))
        {
            OpenVerb.Build(),
            NewVerb.Build(),
            ImportVerb.Build(),
            PhotosVerb.Build(),
            CheckVerb.Build(),
            PaperVerb.BuildBinder(),
            PaperVerb.Build(),
            PaperVerb.BuildAll(),
            HistoryVerb.Build(),
            WindowsVerb.Build(),
            PartsVerb.Build(),
            PeopleVerb.Build(),
            HoursVerb.Build(),
            FirmVerb.Build(),
            FirmPaperVerb.Build(),
            ServiceVerb.Build(),
            KitVerb.Build(),
            KitVerb.BuildOut(),
            KitVerb.BuildIn(),
            SetVerb.Build(),
            BackupVerb.Build(),
            BackupVerb.BuildList(),
            CompareVerb.Build(),
            RestoreVerb.Build(),
            RescueVerb.Build(),
            MergeVerb.Build(),
            ConflictsVerb.Build(),
            WhatIfVerb.Build(),
            OfficeVerb.Build(),
        };
        root.Add(CompletionVerb.Build(root));
        root.Add(HelpVerb.Build(root));
        // Asked of the runtime, the width would put the terminal into another mode.
        if (!Console.IsOutputRedirected && root.Options.OfType<HelpOption>().FirstOrDefault()?.Action is HelpAction help && TerminalSize.Now().Width is > 0
            and var width)
            help.MaxWidth = width;
        var (by, mouse) = (Common.By(), MouseOption.Build());
        root.Add(by);
        root.Add(mouse);
        root.SetAction(parsed => OpenVerb.Run(Common.Given(parsed, by), parsed.GetValue(mouse)));
        return root;
    }
}
