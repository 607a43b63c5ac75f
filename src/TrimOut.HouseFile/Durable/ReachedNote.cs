using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Durable;

/// <summary>Keeps the note of how far the journal got, in the last page of the house file. It is a second witness: a save that was flushed is saved
/// whether the note can be written or not.</summary>
internal sealed class ReachedNote : IDisposable
{
    private readonly IOpenFile _file;
    private readonly long _length;
    private readonly string _journal;
    private bool _failed;

    private ReachedNote(IOpenFile file, long length, string journal)
    {
        _file = file;
        _length = length;
        _journal = journal;
    }

    /// <summary>Begins to keep it in a house file that was just marked.</summary>
    /// <returns>The note; null where the disk does not let a file be written in place.</returns>
    public static ReachedNote? Begin(Surroundings here, HouseFileNames names, long length, string journal)
    {
        try
        {
            return new ReachedNote(here.Files.Open(names.Main), length, journal);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return null;
        }
    }

    /// <summary>Notes the last entry that was flushed.</summary>
    public void Set(long number) => Try(() =>
    {
        var note = new Reached(_journal, number);
        var place = note.PlaceIn(_length);
        // Whoever wrote another file over this one is not to find our note in it.
        if (Reached.Read(_file.Read(place, Reached.Size))?.Journal == _journal)
            _file.Write(place, note.ToSlot());
    });

    /// <summary>Returns when the last note is on the disk.</summary>
    public void FlushToDisk() => Try(_file.FlushToDisk);

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    private void Try(Action write)
    {
        if (_failed)
            return;
        try
        {
            write();
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            _failed = true;
        }
    }
}
