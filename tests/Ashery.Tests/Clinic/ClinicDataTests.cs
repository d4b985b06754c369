using Ashery.Cautions;
using Ashery.Clinic;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Tests;
using Ashery.RootZone;
using Ashery.Sources;

namespace Ashery.Tests.Clinic;

/// <summary>The rows of data/clinic hang together and every one says whose it is.</summary>
public class ClinicDataTests
{
    [Fact]
    public void Every_source_is_listed_and_none_is_seen_that_was_not_looked_up()
    {
        foreach (var row in ClinicData.Shipped.Signs)
        {
            Assert.NotEmpty(row.Voices);
            foreach (var voice in row.Voices)
            {
                var source = SourceIndex.Default.Find(voice.SourceId);
                Assert.True(source is not null, voice.SourceId);
                Assert.True(voice.Provenance != Provenance.Seen || source.LookedUp, $"{row.Cause} {row.Sign} {voice.SourceId}");
            }
        }
    }

    [Fact]
    public void Every_cause_has_signs_every_remedy_cautions_that_exist()
    {
        foreach (var cause in ClinicData.Shipped.Causes)
        {
            Assert.Contains(ClinicData.Shipped.Signs, r => r.Cause == cause.Id);
            foreach (var remedy in Remedies.For(cause.Id))
            {
                Assert.NotNull(SourceIndex.Default.Find(remedy.SourceId));
                Assert.All(remedy.CautionIds, static id => Assert.NotNull(CautionIndex.Default.Find(id)));
                Assert.True(remedy.Route is not ("drench" or "foliar") || remedy.CautionIds.Contains("label-first") || remedy.CautionIds.Contains("ask-first"), remedy.Id);
                Assert.True(remedy.Route != "foliar" || remedy.CautionIds.Contains("spray-mask") || remedy.CautionIds.Contains("ask-first"), remedy.Id);
            }
        }
    }

    [Fact]
    public void Odds_of_every_question_add_up_and_none_is_nothing()
    {
        var knowledge = ClinicKnowledge.Default;
        for (var q = 0; q < knowledge.Questions.Length; q++)
        {
            var n = knowledge.Questions[q].Choices;
            for (var c = 0; c < knowledge.Causes.Length; c++)
            {
                var row = knowledge.Odds(q).AsSpan(c * n, n).ToArray();
                Assert.Equal(1, row.Sum(), 1e-9);
                Assert.All(row, static p => Assert.True(p > 0));
            }
        }
    }

    [Fact]
    public void Scales_have_choices_of_their_questions_and_edges_between_them()
    {
        foreach (var question in ClinicData.Shipped.Questions.Where(static q => q.Public.Unit is not null))
        {
            var scale = Scales.Of(question.Id, null);
            Assert.True(scale is not null, question.Id);
            Assert.Equal(scale.Choices.Length - 1, scale.Edges.Length);
            Assert.Equal(question.Choices, scale.Choices.Length);
            Assert.All(scale.Choices, c => Assert.True(question.IndexOf(c) >= 0, c));
            Assert.Equal(scale.Edges.Order(), scale.Edges);
        }
    }

    /// <summary>One set of conversions between extracts for the pot model and the clinic.</summary>
    [Fact]
    public void Extracts_are_converted_as_the_root_zone_does()
    {
        var constants = RootZoneConstants.Default;
        Assert.Equal(1 / constants[constants.Row("pour-through-over-extract").Id], Scales.ToExtract("pour-through")!.Value, 0.005);
        Assert.Equal(constants[constants.Row("extract-over-one-to-two").Id], Scales.ToExtract("1:2")!.Value, 0.005);
        Assert.Equal(constants[constants.Row("extract-over-one-to-five").Id], Scales.ToExtract("1:5")!.Value, 0.05);
    }

    /// <summary>The printed poinsettia range of campbell-2000 (from memory): magnesium 0.3 to 1.0 % of the recently matured leaf.</summary>
    [Fact]
    public void A_leaf_is_read_by_the_range_of_its_crop()
    {
        var report = PlantClinic.Diagnose(new() { CropId = "poinsettia", Answers = [ClinicAnswer.Measure("leaf_Mg", 0.2), ClinicAnswer.Measure("leaf_N", 4.8)] }).Value!;
        var magnesium = report.Tests.Single(static t => t.QuestionId == "leaf_Mg");
        Assert.Equal((TestLevel.Low, 0.3, 1.0, true), (magnesium.Level, magnesium.Low!.Value, magnesium.High!.Value, magnesium.OfCrop));
        Assert.Equal(TestLevel.Right, report.Tests.Single(static t => t.QuestionId == "leaf_N").Level);
        Assert.Equal("magnesium-deficiency", report.Causes[0].Id);
    }

    [Fact]
    public void A_pour_through_is_read_as_a_saturated_extract()
    {
        ClinicCase visit = new() { Answers = [ClinicAnswer.Measure("EC", 4.2)] };
        Assert.Equal(TestLevel.High, PlantClinic.Diagnose(visit).Value!.Tests[0].Level);
        var poured = PlantClinic.Diagnose(visit with { MediumMethod = "pour-through" }).Value!.Tests[0];
        Assert.Equal((TestLevel.Right, 4.2), (poured.Level, poured.Value));
        Assert.Equal(4.2 / 1.3, poured.AsExtract!.Value, 0.05);
    }

    /// <summary>Norms of tree-ratios (seen): N = 100, P short below 5, K below 25, Mg below 5.</summary>
    [Fact]
    public void Ratios_in_the_leaf_of_a_woody_plant()
    {
        var report = PlantClinic.Diagnose(new() { CropId = "rose", Answers = [ClinicAnswer.Measure("leaf_N", 3.0), ClinicAnswer.Measure("leaf_P", 0.12), ClinicAnswer.Measure("leaf_K", 2.1)] }).Value!;
        Assert.Equal([("P", TestLevel.Low), ("K", TestLevel.Right)], report.Balance.Select(static b => (b.Element, b.Level)));
        Assert.Equal(4, report.Balance[0].PerHundredN, 1e-9);
    }
}
