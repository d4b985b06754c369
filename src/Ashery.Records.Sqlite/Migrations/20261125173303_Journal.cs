using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Ashery.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Journal : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // The number of garden_state counts up by itself from here on. SQLite does that for every whole-number key, so the table need not be
            // made anew; dotnet ef would copy it outside a transaction, and a power cut in the middle would leave half.
            migrationBuilder.AddColumn<string>(
                name: "By",
                table: "garden_state",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Garden",
                table: "garden_state",
                type: "TEXT",
                nullable: false,
                defaultValue: "home");

            migrationBuilder.AddColumn<long>(
                name: "Version",
                table: "garden_state",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.Sql("UPDATE garden_state SET Version = Number;");

            migrationBuilder.CreateTable(
                name: "entry",
                columns: table => new
                {
                    Number = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Garden = table.Column<string>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    TaskDay = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    TaskFeed = table.Column<string>(type: "TEXT", nullable: true),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    AtTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    IsRemoved = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "entry_earlier",
                columns: table => new
                {
                    Garden = table.Column<string>(type: "TEXT", nullable: false),
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Revision = table.Column<int>(type: "INTEGER", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    AtTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    IsRemoved = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry_earlier", x => new { x.Garden, x.Id, x.Revision });
                });

            migrationBuilder.CreateTable(
                name: "entry_pot",
                columns: table => new
                {
                    Garden = table.Column<string>(type: "TEXT", nullable: false),
                    Pot = table.Column<string>(type: "TEXT", nullable: false),
                    Day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    Entry = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry_pot", x => new { x.Garden, x.Pot, x.Day, x.Sequence });
                    table.ForeignKey(
                        name: "FK_entry_pot_entry_Entry",
                        column: x => x.Entry,
                        principalTable: "entry",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_garden_state_Garden_Version",
                table: "garden_state",
                columns: new[] { "Garden", "Version" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Day_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Day", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Id",
                table: "entry",
                columns: new[] { "Garden", "Id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Kind_Day_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Kind", "Day", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_TaskDay",
                table: "entry",
                columns: new[] { "Garden", "TaskDay" },
                filter: "\"TaskDay\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_entry_earlier_Garden_Sequence",
                table: "entry_earlier",
                columns: new[] { "Garden", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_pot_Entry",
                table: "entry_pot",
                column: "Entry");

            // Words come cut by Ashery: letters and digits, which this tokenizer takes as they are.
            migrationBuilder.Sql("CREATE VIRTUAL TABLE entry_words USING fts5(Words, content = 'entry', content_rowid = 'Number', tokenize = 'ascii', prefix = '2 3', detail = 'none', columnsize = 0);");
            migrationBuilder.Sql("CREATE TRIGGER entry_words_insert AFTER INSERT ON entry BEGIN INSERT INTO entry_words (rowid, Words) VALUES (new.Number, new.Words); END;");
            migrationBuilder.Sql("CREATE TRIGGER entry_words_delete AFTER DELETE ON entry BEGIN INSERT INTO entry_words (entry_words, rowid, Words) VALUES ('delete', old.Number, old.Words); END;");
            migrationBuilder.Sql("CREATE TRIGGER entry_words_update AFTER UPDATE OF Words ON entry WHEN old.Words <> new.Words BEGIN INSERT INTO entry_words (entry_words, rowid, Words) VALUES ('delete', old.Number, old.Words); INSERT INTO entry_words (rowid, Words) VALUES (new.Number, new.Words); END;");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.Sql("DROP TABLE entry_words;");

            migrationBuilder.DropTable(
                name: "entry_earlier");

            migrationBuilder.DropTable(
                name: "entry_pot");

            migrationBuilder.DropTable(
                name: "entry");

            migrationBuilder.DropIndex(
                name: "IX_garden_state_Garden_Version",
                table: "garden_state");

            migrationBuilder.DropColumn(
                name: "By",
                table: "garden_state");

            migrationBuilder.DropColumn(
                name: "Garden",
                table: "garden_state");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "garden_state");
        }
    }
}
