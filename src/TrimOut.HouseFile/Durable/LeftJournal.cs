using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>A sound journal that was left beside its house file, open to be gone on with.</summary>
/// <param name="File">It, open.</param>
/// <param name="Contents">What it holds.</param>
/// <param name="End">Where its end mark stands.</param>
/// <param name="Room">Its length.</param>
internal sealed record LeftJournal(IOpenFile File, JournalContents Contents, long End, long Room)
{
    /// <summary>Opens it.</summary>
    /// <returns>Null where there is none, or anything about it is other than closing leaves it: the plain way in then says what.</returns>
    public static LeftJournal? Open(Surroundings here, HouseFileNames names, Trailer trailer)
    {
        if (trailer is not { Form: Trailer.CurrentForm, NotesDamaged: false, Reached: { } reached } || !here.Files.Exists(names.Journal))
            return null;
        var bytes = here.Files.Read(names.Journal);
        var contents = Journal.Read(bytes, trailer.House, here.Seal);
        if (contents is not { Head: { Form: 2 } head, Fault: null, Unread: 0, Ended: true } || head.Id != trailer.Journal || head.Start != trailer.Count
            || head.After != trailer.Seal || contents.Last < reached.Number || bytes.Length % Journal.Room != 0)
            return null;
        var file = here.Files.Open(names.Journal);
        if (file.Length == bytes.Length && file.Read(0, bytes.Length).AsSpan().SequenceEqual(bytes))
            return new(file, contents, bytes.AsSpan().TrimEnd((byte)0).Length - Journal.EndMark.Length, bytes.Length);
        file.Dispose();
        return null;
    }
}
