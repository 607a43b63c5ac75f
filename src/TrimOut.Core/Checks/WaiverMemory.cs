using TrimOut.Core.Houses;
using TrimOut.Core.Reads;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>
/// Whether waivers of earlier releases hold. That is worked out by the words of their day, which takes long; so what was read for it is noted, and it is
/// worked out again only when that changes.
/// </summary>
internal sealed class WaiverMemory
{
    private readonly Dictionary<(string Waiver, Sentence Message), (bool Holds, HashSet<long> Reads)> _known = [];
    private WaiverMemory? _before;
    private readonly HashSet<long> _changed = [];

    /// <summary>Nothing is known yet.</summary>
    public WaiverMemory() { }

    /// <summary>What is known of another state of the house.</summary>
    /// <param name="before">What is known of the state before.</param>
    /// <param name="changed">What reads otherwise now.</param>
    public WaiverMemory(WaiverMemory before, HashSet<long> changed) => (_before, _changed) = (before, changed);

    /// <summary>How often something was worked out, which a test counts.</summary>
    public int WorkedOut { get; private set; }

    /// <summary>Whether a waiver was given for just what is said.</summary>
    public bool Holds(Waiver waiver, Sentence message, House house)
    {
        if (waiver.Arguments is { } arguments && Sentence.AreAsNow(arguments))
            return WaivedFigures.Are(waiver, message, house);
        if (_known.TryGetValue((waiver.Id, message), out var known))
            return known.Holds;
        if (_before is null || !_before._known.TryGetValue((waiver.Id, message), out known) || known.Reads.Overlaps(_changed))
        {
            WorkedOut++;
            // On a view that nothing was read of yet: whatever it keeps for itself was then read for this.
            var view = new House(house.State);
            known.Holds = ReadRecorder.Record(() => WaivedFigures.Are(new Waiver(view, view.State.Items[waiver.Item.Place]), message, view), out known.Reads);
            // It was read for whoever records around this, too.
            foreach (var read in known.Reads)
                ReadRecorder.Note(new ReadKey(read));
        }
        _known.Add((waiver.Id, message), known);
        return known.Holds;
    }

    /// <summary>Lets go of what was known before: all that is asked of this state was asked.</summary>
    public void Settle() => _before = null;
}
