using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>The rows behind the clinic, as they stand in <c>data/clinic</c> or with a source left out.</summary>
internal sealed record ClinicData
{
    private static readonly Lazy<ClinicData> Shared = new(static () => new()
    {
        Model = ModelNumbers.Read(),
        Questions = DataRows.Read("data/clinic/questions.json", QuestionRow.Read),
        Causes = DataRows.Read("data/clinic/causes.json", CauseRow.Read),
        Pairs = DataRows.Read("data/clinic/pairs.json", PairRow.Read),
        Signs = DataRows.Read("data/clinic/signs.json", SignRow.Read),
        Families = DataRows.Read("data/clinic/families.json", FamilyRow.Read),
        Antagonists = DataRows.Read("data/clinic/antagonists.json", AntagonistRow.Read),
        Locks = DataRows.Read("data/clinic/lock-out.json", LockRow.Read),
        Mobilities = DataRows.Read("data/clinic/mobility.json", MobilityRow.Read),
        Crops = CropGroups.Shipped,
    });

    public static ClinicData Shipped => Shared.Value;

    public required ModelNumbers Model { get; init; }

    public required IReadOnlyList<QuestionRow> Questions { get; init; }

    public required IReadOnlyList<CauseRow> Causes { get; init; }

    public required IReadOnlyList<PairRow> Pairs { get; init; }

    public required IReadOnlyList<SignRow> Signs { get; init; }

    public required IReadOnlyList<FamilyRow> Families { get; init; }

    public required IReadOnlyList<AntagonistRow> Antagonists { get; init; }

    public required IReadOnlyList<LockRow> Locks { get; init; }

    public required IReadOnlyList<MobilityRow> Mobilities { get; init; }

    public required CropGroups Crops { get; init; }

    /// <summary>
    /// The same without all that only this source says: signs, pairs, mobility, lock-out, antagonism and what crops are prone to. A row that another source says too stays.
    /// </summary>
    public ClinicData Without(string sourceId)
    {
        bool Stays(Voice[] voices) => voices.Any(v => v.SourceId != sourceId);
        Voice[] Rest(Voice[] voices) => [.. voices.Where(v => v.SourceId != sourceId)];
        return this with
        {
            Signs = [.. Signs.Where(r => Stays(r.Voices)).Select(r => r with { Voices = Rest(r.Voices) })],
            Pairs = [.. Pairs.Where(r => Stays(r.Voices))],
            Families = [.. Families.Where(r => Stays(r.Voices))],
            Antagonists = [.. Antagonists.Where(r => Stays(r.Voices))],
            Locks = [.. Locks.Where(r => Stays(r.Voices))],
            Mobilities = [.. Mobilities.Where(r => Stays(r.Voices))],
            Crops = Crops.Without(sourceId),
        };
    }
}
