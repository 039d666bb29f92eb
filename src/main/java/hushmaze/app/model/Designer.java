package hushmaze.app.model;

import hushmaze.assess.Methods;
import hushmaze.drawing.TextMeasure;
import hushmaze.project.Project;
import hushmaze.size.Sizing;
import hushmaze.store.Presets;
import hushmaze.store.SampleProjects;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableStringValue;

/** Everything the window shows: the project, its results, its file, its pages. */
public final class Designer {
    private final Presets presets;
    private final TextMeasure measure;
    private final ObjectProperty<Message> message = new SimpleObjectProperty<>();
    private final EditModel edit;
    private final ExtrasModel extras;
    private final AirModel air;
    private final SeamsModel seams;
    private final ChoicesModel choices;
    private final StockModel stock;
    private final PathsModel paths;
    private final ResultModel results;
    private final SizingModel sizing;
    private final WhatIfModel whatIf;
    private final SoundFieldModel soundField;
    private final FileModel files;
    private final PagesModel pages;
    private final PlanSizes planSizes;
    private final KeptModel kept;
    private final MendsModel mends;
    private final MeasuredModel measured;
    private final MeasuredAir measuredAir;
    private final MeasuredBrief measuredBrief;
    private final ComparedModel compared;
    private final GuideModel guide;
    private final PartsModel parts;
    private final SettingsModel settings;
    private final ObservableStringValue title;

    /**
     * Begins with the first sample project; nothing is computed yet.
     *
     * @param runners for everything that takes long
     * @param presets to choose from
     * @param measure widths of texts on drawings
     * @param unnamed where work without a file is kept, as if it were the user's file; settings are kept beside it
     * @param stages methods to judge the project by, one after another, fast ones first
     */
    public Designer(Runners runners, Presets presets, TextMeasure measure, Path unnamed, List<Methods> stages) {
        this(runners, Sizing::ofPath, presets, measure, unnamed, stages);
    }

    /** With boxes found in another way. */
    Designer(
            Runners runners,
            SizingModel.Finder finder,
            Presets presets,
            TextMeasure measure,
            Path unnamed,
            List<Methods> stages) {
        this.presets = presets;
        this.measure = measure;
        Project first = SampleProjects.read(SampleProjects.DEFAULT);
        edit = new EditModel(first, message);
        extras = new ExtrasModel(edit, presets.elements());
        air = new AirModel(edit, presets.fans());
        seams = new SeamsModel(edit);
        choices = new ChoicesModel(edit);
        stock = new StockModel(edit);
        paths = new PathsModel(edit);
        results = new ResultModel(edit, runners.results(), stages, message);
        sizing = new SizingModel(edit, runners.searches(), finder, message);
        whatIf = new WhatIfModel(edit, runners.trials(), quickest(stages));
        soundField = new SoundFieldModel(edit, runners.trials());
        files = new FileModel(edit, results, runners.results(), message, unnamed);
        pages = new PagesModel(edit, results, runners.results(), measure, message);
        planSizes = new PlanSizes(edit, results);
        kept = new KeptModel(edit, results.boxes(), runners.trials(), quickest(stages));
        measured = new MeasuredModel(edit, runners.trials(), message);
        measuredAir = new MeasuredAir(edit);
        measuredBrief = new MeasuredBrief(edit);
        compared = new ComparedModel(edit, results, runners.trials());
        mends = new MendsModel(edit, results, extras, air, runners.mends());
        guide = new GuideModel(
                presets,
                LocalDate::now,
                runners.searches(),
                (project, progress, watch) -> Sizing.of(project, 1, progress, watch),
                this::beginFirst);
        edit.whenStarted(guide::leave);
        parts = new PartsModel(edit, results, pages);
        settings = new SettingsModel(unnamed.resolveSibling("settings.json"), runners.results(), message);
        files.fileProperty().addListener((p, before, after) -> {
            if (after != null) {
                settings.used(after);
            }
        });
        title = Bindings.createStringBinding(
                this::titleNow, edit.projectProperty(), files.unsavedProperty(), files.fileProperty());
    }

    private void beginFirst(Project answered, String words) {
        files.newFrom(answered);
        message.set(new Message(false, words));
    }

    /** The last of the stages without the wave solution, which takes too long for many values. */
    private static Methods quickest(List<Methods> stages) {
        return stages.stream()
                .filter(methods -> !methods.wave())
                .reduce((before, after) -> after)
                .orElse(Methods.QUICK);
    }

    private String titleNow() {
        Path file = files.fileProperty().get();
        String place = file == null ? Texts.of("title.noFile") : String.valueOf(file.getFileName());
        return Texts.of(
                files.isUnsaved() ? "title.unsaved" : "title.saved",
                edit.project().name(),
                place);
    }

    public EditModel edit() {
        return edit;
    }

    public ExtrasModel extras() {
        return extras;
    }

    public AirModel air() {
        return air;
    }

    public SeamsModel seams() {
        return seams;
    }

    public ChoicesModel choices() {
        return choices;
    }

    /** Sheets and offcuts parts are cut from. */
    public StockModel stock() {
        return stock;
    }

    public PathsModel paths() {
        return paths;
    }

    public ResultModel results() {
        return results;
    }

    public SizingModel sizing() {
        return sizing;
    }

    public WhatIfModel whatIf() {
        return whatIf;
    }

    public PlanSizes planSizes() {
        return planSizes;
    }

    /** Boxes put by. */
    public KeptModel kept() {
        return kept;
    }

    /** Levels that were measured. */
    public MeasuredModel measured() {
        return measured;
    }

    /** Air that was measured. */
    public MeasuredAir measuredAir() {
        return measuredAir;
    }

    /** What is asked, taken from what was measured. */
    public MeasuredBrief measuredBrief() {
        return measuredBrief;
    }

    /** What was measured held against what is predicted. */
    public ComparedModel compared() {
        return compared;
    }

    public MendsModel mends() {
        return mends;
    }

    public GuideModel guide() {
        return guide;
    }

    public SoundFieldModel soundField() {
        return soundField;
    }

    public FileModel files() {
        return files;
    }

    public PagesModel pages() {
        return pages;
    }

    public PartsModel parts() {
        return parts;
    }

    /** What is remembered from one run to the next. */
    public SettingsModel settings() {
        return settings;
    }

    public Presets presets() {
        return presets;
    }

    public TextMeasure measure() {
        return measure;
    }

    /** What there is to tell; null for nothing. */
    public ObjectProperty<Message> messageProperty() {
        return message;
    }

    /** Of the window: name of the project, its file, and whether there are unsaved changes. */
    public ObservableStringValue titleProperty() {
        return title;
    }
}
