using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Ashery.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstGarden : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "garden_state",
                columns: table => new
                {
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    SavedAtTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    IsDemo = table.Column<bool>(type: "INTEGER", nullable: false),
                    PlaceName = table.Column<string>(type: "TEXT", nullable: false),
                    Latitude = table.Column<double>(type: "REAL", nullable: false),
                    HasNormals = table.Column<bool>(type: "INTEGER", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    UsUnits = table.Column<bool>(type: "INTEGER", nullable: false),
                    ScaleStep = table.Column<double>(type: "REAL", nullable: false),
                    DefaultScoop = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_garden_state", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "bag",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    BagId = table.Column<string>(type: "TEXT", nullable: false),
                    StockGrams = table.Column<double>(type: "REAL", nullable: true),
                    Price = table.Column<double>(type: "REAL", nullable: true),
                    SizeGrams = table.Column<double>(type: "REAL", nullable: true),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    MaterialName = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    IsLiquid = table.Column<bool>(type: "INTEGER", nullable: false),
                    Formula = table.Column<string>(type: "TEXT", nullable: true),
                    MolarMass = table.Column<double>(type: "REAL", nullable: true),
                    HasPure = table.Column<bool>(type: "INTEGER", nullable: false),
                    PureIsLimit = table.Column<bool>(type: "INTEGER", nullable: false),
                    Cas = table.Column<string>(type: "TEXT", nullable: true),
                    TechnicalGrade = table.Column<string>(type: "TEXT", nullable: true),
                    NitrogenAmmonium = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenNitrate = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenUrea = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenOrganic = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenSlow = table.Column<double>(type: "REAL", nullable: false),
                    BulkDensityMin = table.Column<double>(type: "REAL", nullable: true),
                    BulkDensityTypical = table.Column<double>(type: "REAL", nullable: true),
                    BulkDensityMax = table.Column<double>(type: "REAL", nullable: true),
                    LiquidDensity = table.Column<double>(type: "REAL", nullable: true),
                    OsmolesPerKg = table.Column<double>(type: "REAL", nullable: true),
                    CarbonToNitrogen = table.Column<double>(type: "REAL", nullable: true),
                    Moisture = table.Column<double>(type: "REAL", nullable: false),
                    CompatibilityGroup = table.Column<string>(type: "TEXT", nullable: false),
                    Dissolves = table.Column<bool>(type: "INTEGER", nullable: false),
                    SourceId = table.Column<string>(type: "TEXT", nullable: false),
                    Provenance = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "climate_normal",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    MeanMax = table.Column<double>(type: "REAL", nullable: false),
                    MeanMin = table.Column<double>(type: "REAL", nullable: false),
                    RainMm = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_climate_normal", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_climate_normal_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    FeedId = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    NitrogenAmmonium = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenNitrate = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenUrea = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenOrganic = table.Column<double>(type: "REAL", nullable: false),
                    NitrogenSlow = table.Column<double>(type: "REAL", nullable: false),
                    SaltIndex = table.Column<double>(type: "REAL", nullable: true),
                    LimeEquivalent = table.Column<double>(type: "REAL", nullable: true),
                    BulkDensity = table.Column<double>(type: "REAL", nullable: true),
                    Dissolves = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_feed_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "pot",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    PotId = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    CropId = table.Column<string>(type: "TEXT", nullable: false),
                    Litres = table.Column<double>(type: "REAL", nullable: false),
                    Medium = table.Column<string>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Planted = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    LastRepotted = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Count = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: true),
                    TopDiameter = table.Column<double>(type: "REAL", nullable: true),
                    Height = table.Column<double>(type: "REAL", nullable: true),
                    BottomDiameter = table.Column<double>(type: "REAL", nullable: true),
                    NeedsTraceElements = table.Column<bool>(type: "INTEGER", nullable: true),
                    LowPhosphorus = table.Column<bool>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_pot", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_pot_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "rule_change",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    RuleId = table.Column<string>(type: "TEXT", nullable: false),
                    Setting = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_rule_change", x => new { x.State, x.RuleId });
                    table.ForeignKey(
                        name: "FK_rule_change_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "scoop",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Litres = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_scoop", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_scoop_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "season",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    FromMonth = table.Column<int>(type: "INTEGER", nullable: false),
                    FromDay = table.Column<int>(type: "INTEGER", nullable: false),
                    ToMonth = table.Column<int>(type: "INTEGER", nullable: false),
                    ToDay = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_season", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_season_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_content",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Bag = table.Column<int>(type: "INTEGER", nullable: false),
                    OfPure = table.Column<bool>(type: "INTEGER", nullable: false),
                    Nutrient = table.Column<string>(type: "TEXT", nullable: false),
                    Fraction = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_content", x => new { x.State, x.Bag, x.OfPure, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_bag_content_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_figure",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Bag = table.Column<int>(type: "INTEGER", nullable: false),
                    Which = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    SourceId = table.Column<string>(type: "TEXT", nullable: false),
                    Provenance = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_figure", x => new { x.State, x.Bag, x.Which });
                    table.ForeignKey(
                        name: "FK_bag_figure_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_solubility",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Bag = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Celsius = table.Column<double>(type: "REAL", nullable: false),
                    GramsPerKgWater = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_solubility", x => new { x.State, x.Bag, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_solubility_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_spread",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Bag = table.Column<int>(type: "INTEGER", nullable: false),
                    Nutrient = table.Column<string>(type: "TEXT", nullable: false),
                    Min = table.Column<double>(type: "REAL", nullable: false),
                    Typical = table.Column<double>(type: "REAL", nullable: false),
                    Max = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_spread", x => new { x.State, x.Bag, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_bag_spread_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_word",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Bag = table.Column<int>(type: "INTEGER", nullable: false),
                    List = table.Column<string>(type: "TEXT", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_word", x => new { x.State, x.Bag, x.List, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_word_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed_content",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Feed = table.Column<int>(type: "INTEGER", nullable: false),
                    Nutrient = table.Column<string>(type: "TEXT", nullable: false),
                    Fraction = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed_content", x => new { x.State, x.Feed, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_feed_content_feed_State_Feed",
                        columns: x => new { x.State, x.Feed },
                        principalTable: "feed",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed_part",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Feed = table.Column<int>(type: "INTEGER", nullable: false),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    Share = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed_part", x => new { x.State, x.Feed, x.MaterialId });
                    table.ForeignKey(
                        name: "FK_feed_part_feed_State_Feed",
                        columns: x => new { x.State, x.Feed },
                        principalTable: "feed",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "scoop_calibration",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Scoop = table.Column<int>(type: "INTEGER", nullable: false),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    Min = table.Column<double>(type: "REAL", nullable: false),
                    Typical = table.Column<double>(type: "REAL", nullable: false),
                    Max = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_scoop_calibration", x => new { x.State, x.Scoop, x.MaterialId });
                    table.ForeignKey(
                        name: "FK_scoop_calibration_scoop_State_Scoop",
                        columns: x => new { x.State, x.Scoop },
                        principalTable: "scoop",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "bag_content");

            migrationBuilder.DropTable(
                name: "bag_figure");

            migrationBuilder.DropTable(
                name: "bag_solubility");

            migrationBuilder.DropTable(
                name: "bag_spread");

            migrationBuilder.DropTable(
                name: "bag_word");

            migrationBuilder.DropTable(
                name: "climate_normal");

            migrationBuilder.DropTable(
                name: "feed_content");

            migrationBuilder.DropTable(
                name: "feed_part");

            migrationBuilder.DropTable(
                name: "pot");

            migrationBuilder.DropTable(
                name: "rule_change");

            migrationBuilder.DropTable(
                name: "scoop_calibration");

            migrationBuilder.DropTable(
                name: "season");

            migrationBuilder.DropTable(
                name: "bag");

            migrationBuilder.DropTable(
                name: "feed");

            migrationBuilder.DropTable(
                name: "scoop");

            migrationBuilder.DropTable(
                name: "garden_state");
        }
    }
}
