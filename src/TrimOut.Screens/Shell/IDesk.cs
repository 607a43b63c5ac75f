using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Plans.Photos;
using TrimOut.Core.Units;
using TrimOut.Screens.Firm;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Schedules;

namespace TrimOut.Screens.Shell;

/// <summary>What the program does for the screens: files, papers, settings and the clock.</summary>
public interface IDesk
{
    /// <summary>The clock.</summary>
    TimeProvider Clock { get; }

    /// <summary>Houses opened lately, the latest first, and the sample jobs.</summary>
    IReadOnlyList<HouseChoice> Houses { get; }

    /// <summary>The look that was last chosen; null the first time.</summary>
    string? Look { get; set; }

    /// <summary>Whether clicks are taken; else the mouse is left to the terminal, to select text with. Remembered.</summary>
    bool TakesMouse { get => true; set { } }

    /// <summary>Has a text edited in the user's own editor, to which the terminal belongs meanwhile.</summary>
    /// <returns>The text as it was left, or why there is none.</returns>
    Result<string> Edit(string text) => new Refusal("There is no editor here.");

    /// <summary>Who works here: whose changes are written. Null where nobody was asked yet.</summary>
    string? Who { get => ""; set { } }

    /// <summary>What somebody is called where nobody was asked: the name that the machine has.</summary>
    string UsualWho => "";

    /// <summary>Opens a house file, or a sample job as a house file of its own.</summary>
    Result<Scribe> Open(string path);

    /// <summary>Opens a house file for reading only, whoever else has it open.</summary>
    Result<Scribe> OpenToRead(string path);

    /// <summary>Whether the last opening failed only because another program has the house open: it can still be looked at.</summary>
    bool CanStillLook { get; }

    /// <summary>What has to be read before working on the house that was opened last, such as a save that never ended.</summary>
    IReadOnlyList<string> Notices { get; }

    /// <summary>Makes a house file.</summary>
    /// <param name="name">The house's name, which the file's name is made from.</param>
    /// <param name="units">Its units.</param>
    /// <param name="kit">The parts of the user's kit that it begins with; blank ones where there are none.</param>
    Result<Scribe> Create(string name, DisplayUnits units, IReadOnlyCollection<PartSheet> kit);

    /// <summary>Where the parts of the user's kit are kept, for the user.</summary>
    string KitFolder { get; }

    /// <summary>The parts that are kept there as they are now, and behind them older texts of them; one that can't be read with the reason.</summary>
    IReadOnlyList<KeptPart> Kit { get; }

    /// <summary>The parts that are kept in another folder, which was typed; one that can't be read with the reason.</summary>
    /// <returns>The parts; or that there is no such folder, or that it can't be read.</returns>
    Result<IReadOnlyList<KeptPart>> KitIn(string folder) => new Refusal($"There is no folder {folder}.");

    /// <summary>Which of these parts would take the place of a kept one that was checked against its sheet and of which they know less.</summary>
    IReadOnlyList<string> Weaker(IReadOnlyList<PartSheet> parts);

    /// <summary>Keeps parts there, none of them in the place of another.</summary>
    /// <returns>Their files, or why one of them could not be written.</returns>
    Result<IReadOnlyList<string>> Keep(IReadOnlyList<PartSheet> parts);

    /// <summary>House files that may be copies of a house, which is in this file. Called beside the keys.</summary>
    IReadOnlyList<CopyChoice> Copies(string where) => [];

    /// <summary>Reads another copy of a house, and nothing else. Called beside the keys.</summary>
    /// <returns>What is in it; or that it is not there, is no house file, is damaged or can't be read.</returns>
    Result<CopyRead> ReadCopy(string path) => new Refusal($"{path} can't be read.");

    /// <summary>Where a house stands with the office, as far as this machine knows; null where it is enrolled at none. Asks no network: the screens ask with
    /// every key.</summary>
    OfficeStanding? Office(HouseLog log) => null;

    /// <summary>Sends what the office lacks and fetches what was done elsewhere; nothing is taken in yet. Called beside the keys.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops it at once: doing it again is safe.</param>
    /// <returns>What came and was sent; or why the two could not exchange.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    Result<OfficeExchange> Exchange(HouseLog log, Action<string> says, CancellationToken stop) => new Refusal("There is no office here.");

    /// <summary>Files that may be window schedules: beside a house file, in the user's folders, on sticks. Called beside the keys.</summary>
    IReadOnlyList<ScheduleChoice> Schedules(string where) => [];

    /// <summary>What a window schedule would bring into a house, compared with what the house has. Called beside the keys.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="path">The file.</param>
    /// <param name="columns">Columns that were chosen, field to header; none goes by the headers, or as it was chosen for such headers before.</param>
    /// <returns>That; or that the file is not there, is no schedule or can't be read.</returns>
    Result<ScheduleRead> ReadSchedule(HouseLog log, string path, IReadOnlyDictionary<string, string> columns) => new Refusal($"{path} can't be read.");

    /// <summary>Writes the visits of a house beside its file, for a calendar to take in. Called beside the keys.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="where">The house file.</param>
    /// <returns>The file, or why it could not be written.</returns>
    Result<string> WriteCalendar(HouseLog log, string where) => new Refusal("There is no calendar here.");

    /// <summary>What the phases of other houses took that were opened here. Called beside the keys.</summary>
    /// <param name="where">The house that is to be estimated by them.</param>
    /// <param name="stop">Stops between two houses.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    IReadOnlyList<ImmutableArray<PhaseHours>> OtherHours(string where, CancellationToken stop) => [];

    /// <summary>All houses of the user's folders, as they were kept; what changed since is made anew beside the keys. Called beside the keys.</summary>
    IFirmBoard Firm() => NoHouses.Board;

    /// <summary>Writes a paper over several houses into the user's own folder. Called beside the keys.</summary>
    /// <param name="paper">Its short name.</param>
    /// <param name="houses">The house files.</param>
    /// <param name="all">All houses that there are: which are left out, and which can't be opened, stands on the paper.</param>
    /// <param name="filter">What the houses were chosen by, in words, which the name of the file says; empty for all.</param>
    /// <param name="stop">Stops between two houses.</param>
    /// <returns>The files that were written, or why there are none.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    Result<IReadOnlyList<string>> WriteOverHouses(string paper, IReadOnlyList<string> houses, IReadOnlyList<FirmRow> all, string filter,
        CancellationToken stop) => new Refusal("There are no papers here.");

    /// <summary>Whether the file of a picture is there, by the path that was typed for it.</summary>
    /// <param name="where">The house file.</param>
    /// <param name="picture">The path.</param>
    bool IsThere(string where, string picture) => true;

    /// <summary>Folders with pictures: beside a house file, in the user's folders, on sticks. Called beside the keys.</summary>
    IReadOnlyList<PhotoFolderChoice> PhotoFolders(string where) => [];

    /// <summary>The pictures of a folder and of those in it, with what each says. Called beside the keys.</summary>
    /// <param name="log">The house with its history, which tells what was taken in before.</param>
    /// <param name="where">The house file.</param>
    /// <param name="folder">The folder.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops between two pictures.</param>
    /// <returns>That; or that there is no such folder, or it can't be read.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    Result<PhotosRead> ReadPhotos(HouseLog log, string where, string folder, Action<string> says, CancellationToken stop) =>
        new Refusal($"{folder} can't be read.");

    /// <summary>Copies pictures beside a house file, each whole or not at all; the pictures themselves stay where they are. Called beside the keys.</summary>
    /// <param name="log">The house with its history, which tells for how many more there is room.</param>
    /// <param name="where">The house file.</param>
    /// <param name="photos">Their files, and where each is to be noted.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops between two pictures: those that were copied by then are there.</param>
    /// <returns>For each its path beside the house file, or why it was not copied.</returns>
    IReadOnlyList<Result<string>> CopyPhotos(HouseLog log, string where, IReadOnlyList<(PhotoFile File, PhotoPlace Place)> photos, Action<string> says,
        CancellationToken stop) => [.. photos.Select(_ => (Result<string>)new Refusal("There are no pictures here."))];

    /// <summary>A picture small enough for cells, by the path that was noted for it or a whole one; or why it can't be shown. Called beside the keys.</summary>
    Result<CellPicture> Picture(string where, string path) => new Refusal("There are no pictures here.");

    /// <summary>Where the file of a picture is, by the path that was noted for it or a whole one.</summary>
    string FileOf(string where, string path) => path;

    /// <summary>Closes a house file that was opened or made here.</summary>
    void Close(Scribe scribe);

    /// <summary>A new file in the user's own folder that a whole house could be written to.</summary>
    string Elsewhere(Scribe scribe);

    /// <summary>Writes the whole house to a new file, for when its own can't be saved to.</summary>
    /// <param name="scribe">The house.</param>
    /// <param name="path">The new file; nothing may be there yet.</param>
    /// <returns>The house, open in its new file; or why that could not be written either.</returns>
    Result<Scribe> WriteElsewhere(Scribe scribe, string path);

    /// <summary>Keeps a note about a fault of the program's own where the user finds it.</summary>
    /// <returns>Where it is, or null when it could not be written.</returns>
    string? NoteFault(string note);

    /// <summary>The papers that can be written.</summary>
    IReadOnlyList<PaperChoice> Papers { get; }

    /// <summary>A paper as it will be, part by part. Called beside the keys.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    Result<IReadOnlyList<PreviewBlock>> Preview(string paper, PaperHouse house, CancellationToken stop);

    /// <summary>How labels lie on their sheets, as it was chosen last; null is plain paper, to be cut. Remembered.</summary>
    string? LabelSheet => null;

    /// <summary>Sheets of labels that are common, as they are typed.</summary>
    IReadOnlyList<string> LabelSheets => [];

    /// <summary>What is understood of a sheet of labels as it is typed, or why it is none.</summary>
    Result<string> LabelsInWords(string typed) => new Refusal("There are no labels here.");

    /// <summary>Chooses the sheet that labels are written for from now on.</summary>
    /// <returns>The sheet in words, or why it is none.</returns>
    Result<string> ChooseLabels(string typed) => new Refusal("There are no labels here.");

    /// <summary>Writes papers beside the house file, one after the other: each is whole or not there. Called beside the keys.</summary>
    /// <param name="papers">Their short names.</param>
    /// <param name="pdf">Whether each is written as PDF too, which a browser of this machine prints.</param>
    /// <param name="house">What they are written from.</param>
    /// <param name="says">Told what is being written.</param>
    /// <param name="over">Files that the user said may be written over, though they are not as TrimOut wrote them.</param>
    /// <param name="stop">Stops between two papers.</param>
    /// <returns>The files that were written, or why there are none or not all.</returns>
    Result<PapersWritten> Write(IReadOnlyList<string> papers, bool pdf, PaperHouse house, Action<string> says, IReadOnlySet<string> over,
        CancellationToken stop);
}

/// <summary>What came of writing papers.</summary>
/// <param name="Files">The files that were written.</param>
/// <param name="InTheWay">Files that are not as TrimOut wrote them, at which it stopped; none when all papers were written.</param>
public sealed record PapersWritten(IReadOnlyList<string> Files, IReadOnlyList<string> InTheWay);

/// <summary>A house that another program has open.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Why">Who has it, for the user.</param>
public sealed record LockedHouse(string Path, string Why);

/// <summary>A house that can be opened.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Sample">Whether it is a sample job.</param>
/// <param name="About">A line about it.</param>
public sealed record HouseChoice(string Path, string Name, bool Sample, string About);

/// <summary>A house file that may be a copy of a house.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Changed">When it was last written; null where the disk does not say.</param>
/// <param name="Same">Whether it was begun as the same house; null where it is no house file that can be read.</param>
public sealed record CopyChoice(string Path, string Name, DateTimeOffset? Changed, bool? Same);

/// <summary>What is in another copy of a house.</summary>
/// <param name="Log">Its history.</param>
/// <param name="Remarks">What is to be said about how it was found.</param>
public sealed record CopyRead(HouseLog Log, IReadOnlyList<string> Remarks);

/// <summary>Where a house stands with the office.</summary>
/// <param name="InWords">When the two last exchanged and how many changes are not there yet, in one line.</param>
/// <param name="NotYetThere">The changes that are not yet there, the latest first.</param>
public sealed record OfficeStanding(string InWords, IReadOnlyList<Change> NotYetThere)
{
    /// <summary>How many changes came from the office and were not taken in yet.</summary>
    public int PutOff { get; init; }
}

/// <summary>What came of exchanging with the office.</summary>
/// <param name="Merge">This house with what came, not yet taken in; null where nothing did.</param>
/// <param name="Sent">How many changes the office had not had.</param>
public sealed record OfficeExchange(Merge? Merge, int Sent)
{
    /// <summary>How many changes stayed here because this device may only read the house at the office.</summary>
    public int NotSent { get; init; }
}

/// <summary>A paper that can be written.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Title">Its title.</param>
/// <param name="For">Whom it is for.</param>
public sealed record PaperChoice(string Id, string Title, string For)
{
    /// <summary>Whether it is printed on sheets of labels, which can be chosen.</summary>
    public bool OnLabels { get; init; }

    /// <summary>When it was written beside the house file that is open, and how far the history was seen then; null where it was not.</summary>
    public PaperWriting? Written { get; init; }
}

/// <summary>When a paper was written.</summary>
/// <param name="At">When, by the clock of the disk.</param>
/// <param name="Extent">How far the history was seen; see <see cref="HouseLog.Extent"/>.</param>
public sealed record PaperWriting(DateTimeOffset At, string Extent);

/// <summary>The house that papers are written from, as it stood when they were asked for.</summary>
/// <param name="Log">The house with its history.</param>
/// <param name="Report">What the checks say of it, worked out when it is asked for.</param>
/// <param name="Where">Its file.</param>
/// <param name="Date">The day that stands on the papers.</param>
public sealed record PaperHouse(HouseLog Log, Func<CheckReport> Report, string Where, DateOnly Date);

/// <summary>What a part of a paper is.</summary>
public enum PreviewKind
{
    /// <summary>A heading.</summary>
    Heading,

    /// <summary>A paragraph.</summary>
    Paragraph,

    /// <summary>One item of a list.</summary>
    Item,

    /// <summary>A table; its first row is its head.</summary>
    Table,
}

/// <summary>A piece of text on a paper.</summary>
/// <param name="Text">The text; of a picture, its description.</param>
/// <param name="Strong">Whether it stands out.</param>
/// <param name="Picture">Whether it stands for a picture.</param>
public readonly record struct PreviewText(string Text, bool Strong = false, bool Picture = false);

/// <summary>A part of a paper that is looked at.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Level">Of a heading from 1 on; of an item how deep its list lies, from 0 on.</param>
/// <param name="Mark">What stands before an item.</param>
/// <param name="Text">Its text.</param>
/// <param name="Rows">The rows of a table, cell by cell.</param>
public sealed record PreviewBlock(PreviewKind Kind, int Level, string Mark, ImmutableArray<PreviewText> Text,
    ImmutableArray<ImmutableArray<ImmutableArray<PreviewText>>> Rows);
